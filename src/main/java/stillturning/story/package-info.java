/**
 * What can be told about a failure: what was supposed, what happened when and why, what became of
 * the engine. Values only, made by the timeline room and read by every room above it. Knows no
 * solver, no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A story records what the engine and its loads were doing</b> ({@code StateBar}), because
 *       a load that rides through a dip, or is shed, has no event. Held by {@code BarsTest}.
 * </ul>
 */
@NullMarked
package stillturning.story;

import org.jspecify.annotations.NullMarked;
