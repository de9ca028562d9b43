/**
 * What failures do together, and what nobody sees of them. In: a study, a candidate, what it is
 * known to share. Out: minimal sets of events that end the engine, told by the time line. Knows no
 * file, no screen, and judges no single failure: that is the work of {@code assess}.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Sets that change the same are told once.</b> {@code Conditions} brings each set of
 *       events to its changes, and this is why few stories are needed. Openings of one chain (nets
 *       inside a chain join two elements, and nothing measures them) are one change. A part altered
 *       in place in an opened chain is no change. A protector that cannot open, a contact welded in
 *       the position in which it is, and an opening in a chain whose load does not run are left out
 *       until the story without them calls on their part. Each of these rules leaves every current
 *       as it was. Turned down: graph cuts as a first guess (a short is worse than a removal), and
 *       leaving out pairs that share no net. Held by {@code ConditionsTest}, with 1,500 sets told
 *       both ways.
 *   <li><b>Most sets are told by the quick time line</b>, doubtful ones by the exact one, as {@code
 *       story.timeline} decides. Held by {@code ConditionsTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.combined;

import org.jspecify.annotations.NullMarked;
