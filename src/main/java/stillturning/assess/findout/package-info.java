/**
 * What it is worth to find out one uncertain number before choosing among candidates. In: what each
 * candidate would be worth with the number anywhere in its range. Out: how likely it turns the
 * choice or a verdict, where it turns them, and what is gained by knowing it. Knows no candidate,
 * no volt, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The worth of knowing is the mean of the best choice made afterwards less the best choice
 *       made now</b> (R. A. Howard, Information value theory, IEEE Trans. SSC-2 (1966) 22-26, from
 *       memory), all other numbers as they are likely. So a number that never changes the choice is
 *       worth nothing, however far it moves what the choice brings. Held by {@code WorthTest},
 *       whose answers are known, and by ranking again on either side of every turn.
 *   <li><b>A candidate loses one whole point for each hard requirement that it misses</b>, which is
 *       as much as all criteria together: so the order by worth is the order of the ranking.
 *   <li><b>Turns are found by halving</b> between two places whose answers differ, as answers
 *       change in steps; both sides of a turn have been looked at. Two turns that undo each other
 *       between two places that are looked at are not seen. Turned down: slopes.
 *   <li><b>Which steps any number can reach is found with all numbers at once</b>: every number
 *       goes to one of its ends in each of a few trials and to the other in the trial's mirror. A
 *       step that turned in no trial with a number at an end is not told with that number alone
 *       there, all others are. Turned down: every failure told again for every number, which takes
 *       an hour; and asking that a step turns in every such trial, which loses whatever another
 *       number can undo. What several numbers undo in all of these trials is not seen. Held by
 *       {@code GroupScreenTest} and {@code GuessingTest}.
 * </ul>
 */
@NullMarked
package stillturning.assess.findout;

import org.jspecify.annotations.NullMarked;
