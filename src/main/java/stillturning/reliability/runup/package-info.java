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
 *   <li><b>Moves are made one after the other, in an order that is searched for.</b> A set of moves
 *       is played move by move, there and back, at a hand's pace and three times as slowly; the
 *       first order in which nothing of {@code story.AdverseEffect} happens is the one that is
 *       printed. Where there is none, where a lever is out of reach, or where a lamp stays lit long
 *       after, the check is not offered and the card says why. Two levers that do harm in either
 *       order are tried with a third: it is the alternator's switch that lets a battery be taken
 *       off. Loads that the pilot may shed and does not watch are off meanwhile, or a slow
 *       alternator does not fill the battery again. Turned down: all levers of a check in one
 *       stroke, in the order of their names, which no hand can do. Held by {@code MoveTrialsTest}.
 *   <li><b>Where only pairs with a latent failure are asked for, no other pair is told</b> ({@code
 *       LatentPairs}): a requirement can then be held against a candidate in a part of the time
 *       that all pairs take. Held by {@code LatentPairsTest}, against all pairs.
 * </ul>
 */
@NullMarked
package stillturning.reliability.runup;

import org.jspecify.annotations.NullMarked;
