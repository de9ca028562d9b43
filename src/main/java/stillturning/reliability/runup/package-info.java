/**
 * What nobody sees in flight, and what a pilot can do on the ground to see it. In: a study, a
 * candidate, what events do together in it. Out: latent failures and the fewest checks that reveal
 * those that matter. Knows no file, no screen, no rate.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A failure is latent if the pilot sees the same from turning the key to the landing</b>:
 *       cues, loads whose stopping is noticed, the engine. A check reveals only what looks
 *       different however long its position is held (15, 30 and 90 s), so that a lamp which a
 *       charging battery puts out a little later tells nothing. The whole card is played once with
 *       every failure that it is to reveal. A breaker that a hand can pull may still not trip, so
 *       pulling it does not reveal that. Turned down: moving on from one check to the next without
 *       setting the levers back, which saves a few moves and leaves the states behind unproven.
 *       Held by {@code RunUpTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.runup;

import org.jspecify.annotations.NullMarked;
