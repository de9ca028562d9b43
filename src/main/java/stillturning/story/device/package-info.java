/**
 * What the devices of a circuit share: the situation that they read, the laws that they set, the
 * journal that they write to. In: a circuit and the moment. Out: branches for the solver, events in
 * order. Knows no single device, no pilot, no engine.
 */
@NullMarked
package stillturning.story.device;

import org.jspecify.annotations.NullMarked;
