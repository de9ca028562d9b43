/**
 * Hard requirements, held against what was found. In: verdicts, burdens, and a survey of what other
 * rooms know. Out: met or missed, with reason and margin.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Sizes and arms are looked at by the room that knows them</b>, through a {@link
 *       stillturning.assess.requirement.Survey}, and only where the study asks. Where nobody looks
 *       the requirement counts as missed and says so: a verdict that was not found is none. Held by
 *       {@code FurtherRequirementsTest}.
 *   <li><b>A margin is a number where there is one</b>: volts above what a load needs while the
 *       engine starts, seconds for which something is missing or dark, failures too many; with the
 *       failure that comes nearest. Held by {@code MarginsTest}.
 *   <li><b>A load is dark by what supplies it.</b> Its own failures are the same in every layout
 *       and are held against none. What the pilot switches off by a procedure is not dark.
 * </ul>
 */
@NullMarked
package stillturning.assess.requirement;

import org.jspecify.annotations.NullMarked;
