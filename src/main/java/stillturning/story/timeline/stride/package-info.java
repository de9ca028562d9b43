/**
 * How charges and heats are carried from one event to the next: the formulas, the length of a step,
 * and where in it the first margin falls below 0. In: states and devices. Out: the time reached,
 * with the network solved there. Knows no single device, no pilot, no engine.
 *
 * <p>Decisions: see {@code story.timeline}.
 */
@NullMarked
package stillturning.story.timeline.stride;

import org.jspecify.annotations.NullMarked;
