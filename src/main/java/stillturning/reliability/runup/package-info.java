/**
 * What nobody sees in flight, and what a pilot can do on the ground to see it. In: a study, a
 * candidate, what events do together in it. Out: latent failures and the fewest checks that reveal
 * those that matter. Knows no file, no screen, no rate.
 */
@NullMarked
package stillturning.reliability.runup;

import org.jspecify.annotations.NullMarked;
