/**
 * Two opinions on one candidate held against each other: what ends the engine by its shape alone,
 * and by the time line. In: a candidate and its stories. Out: every disagreement, named. Knows no
 * verdict and no screen.
 */
@NullMarked
package stillturning.assess.crosscheck;

import org.jspecify.annotations.NullMarked;
