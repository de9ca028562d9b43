/**
 * What happens after a failure, event by event. In: a candidate and a failure. Out: a story with
 * its events, traces and endurance. Owns charge, heat, delays, the engine and the pilot; knows no
 * file, no screen, and nothing of the structure room.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The ends of straight pieces are events.</b> Charge moves along one straight piece of a
 *       battery's curve at a time, so a step never crosses a kink (see {@code parts.element}). Held
 *       by {@code ClosedFormsTest} and {@code EqualisingTest}.
 *   <li><b>A charge that moves very slowly still crosses an event.</b> A step reaches at least as
 *       far as the last digit of what moves. At 1e-9 a second, two nanoseconds do not change that
 *       digit, and a story stopped there without end. Held by {@code AdvanceTest}.
 *   <li><b>Every story ends, and the device that flips is named.</b> Held by {@code ChatterTest},
 *       and by {@code HostileCircuitsTest} with relays, packs, converters and alternators joined at
 *       random. More load or less battery may last longer only where it makes somebody shed
 *       earlier, or makes something trip or stop, and the story shows it: {@code
 *       ActedEnduranceTest}.
 *   <li><b>Energy and charge of a story must balance</b> within 1e-5, or the story is refused.
 *       Usual is 2.5e-9; the worst in Sandpiper is 3e-7, across a kink. Powers are integrated with
 *       the weights of the step that moves the charges. What the batteries gave is the area under
 *       their open-circuit curves, computed from the charges alone. The energy that flows is
 *       counted as 10 mW at least, since a dead aircraft only adds up rounding. Held by {@code
 *       BalanceTest} and {@code DeadAircraftTest}.
 *   <li><b>A dip within a step is looked for</b> where the margins, read at the stages of the step,
 *       come nearer to 0 than they move about. Then the step is examined at every eighth. Shorter
 *       dips may be missed. Held by {@code AdvanceTest}.
 *   <li><b>Whether the engine lasts is asked quickly; when something happens is asked exactly.</b>
 *       {@code Timeline.quick} carries charges with a tolerance of 1e-5 a step instead of 3e-10,
 *       and a search for sets of failures stops it a hundredth after the time to land. The exact
 *       time line tells three cases to the end: a set within a hundredth of that time, a set that
 *       stops an engine which may yet come back, and a set that cannot be told quickly. It also
 *       tells the pair that is printed as a story. All other rows of {@code --pairs} rest on the
 *       quick answer. Held by {@code ConditionsTest}, which compares it with the exact answer.
 *   <li><b>A step is as long as its error allows, and the order of parts hardly matters.</b> Event
 *       times differ by at most 3.3e-8 of their value from those at a tolerance of 2e-11, on which
 *       two different step controls agree. In random aircraft the order of parts moves times by
 *       less than 1e-7, and other steps by less than 3e-6, most where a step crosses the corner
 *       between charging and discharging and the voltage then hardly falls. A step length that is
 *       remembered must also grow along straight ways; otherwise a story goes on in tiny steps
 *       after one hard kink. Turned down: a looser tolerance (5e-9 for 3e-10), which saves a sixth
 *       of the time and moves event times by 2.5e-6. Held by {@code RandomInvarianceTest} and
 *       {@code AdvanceTest}.
 * </ul>
 */
@NullMarked
package stillturning.story.timeline;

import org.jspecify.annotations.NullMarked;
