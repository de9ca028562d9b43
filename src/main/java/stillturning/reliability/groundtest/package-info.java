/**
 * What a builder can show of a finished aircraft on the ground: single failures made by hand, one
 * after the other, each with what must happen then. In: a study, a candidate. Out: a {@link
 * stillturning.reliability.groundtest.GroundTest}, whose steps have been played in their order.
 * Knows no file, no screen, no words for people.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A step shows a failure if it leaves the same state behind and nothing flows any more
 *       where the failure would have opened the way.</b> So pulling a breaker shows every failure
 *       of its line, the load's own included, by comparing played states and not by a list of
 *       kinds. What only opens can be shown by hand; what shorts, welds, sags or runs away cannot,
 *       and is listed with the reason. Where no hand can do just the same, a step that leaves the
 *       same loads, signs and volts within what a meter leaves open shows it too: an alternator
 *       that gives nothing is shown by its switch. Turned down: failures that end like a step by
 *       another cause (a short that a breaker has cleared), since the step would not have shown
 *       that the breaker opens. Held by {@code GroundTestTest}.
 *   <li><b>Nothing is harmed.</b> A step is left out if {@code story.AdverseEffect} comes of it,
 *       there or on the way back, or if not all is as before once it is put together; the reason is
 *       printed. An engine that falters or stops is no harm on the ground, but no step has it stop:
 *       what stops it is shown with the engine at rest, by the loads that then go dark.
 *   <li><b>Hands stay away from terminals while the propeller turns.</b> With the engine running
 *       only switches and breakers are moved that the study has in reach then. Common practice, no
 *       published source.
 *   <li><b>The whole plan is played in the printed order</b>, at the printed pace and half as
 *       quickly, charges and heats going on from step to step; limits are what both show, with an
 *       allowance for the instrument. Batteries are charged again before they have given half of
 *       their capacity. Turned down: limits from each step played by itself, which a battery that
 *       has fed thirty steps does not keep.
 *   <li><b>What may be shed and is not watched, and what runs now and then, is off</b> but for the
 *       steps that show it. A load that runs neither in the run-up nor where failures are asked
 *       about is not run at all: on the ground a gear pump folds the legs.
 * </ul>
 */
@NullMarked
package stillturning.reliability.groundtest;

import org.jspecify.annotations.NullMarked;
