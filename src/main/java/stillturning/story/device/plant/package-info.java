/**
 * All devices of one circuit, and how each behaves in time but the batteries: a small state machine
 * on a branch of the network, with one signed margin and one deadline. In: a circuit and the
 * situation that its devices share. Out: laws for the solver, events for the journal. Knows no
 * pilot, no engine, no order of events.
 */
@NullMarked
package stillturning.story.device.plant;

import org.jspecify.annotations.NullMarked;
