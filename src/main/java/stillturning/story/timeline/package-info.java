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
 *   <li><b>Pressing the starter is an act of the pilot</b>: after a procedure's moves, by the
 *       study's stated habit some time after a stop, or as the flight has it after a phase with the
 *       engine off. Nobody presses it for nothing, and one who does nothing never does; a habit
 *       presses once a stop, once more after each act, and once when the needs have come back, so
 *       that no story cranks without end. Held by {@code StarterTest}.
 *   <li><b>A starter that is fed though nobody turns the key runs on</b>, behind contacts that are
 *       welded or a button that sticks; what is live in normal flight has a solenoid of its own. It
 *       draws as much as while it turns the engine: what it draws running free is less, and nobody
 *       states it, so the endurance errs to the short side. Nobody can shed it. Held by {@code
 *       StarterTest}.
 *   <li><b>A voltage is measured between the terminals that the instrument has.</b> Where a cue
 *       names the load that shows it, that is from what it watches to the load's own minus: a
 *       return that rises takes from the reading. A lamp of its own has no terminals in any file,
 *       and is taken to return where all returns meet. Turned down: a terminal for its minus in
 *       each cue, which nobody would write. Held by {@code PilotTest}.
 *   <li><b>Normal flight begins with every coil pulled in.</b> A contactor that is fed through
 *       itself holds then, and would never have closed: so it comes to rest once more with all of
 *       them released, and what stays open is told beside normal flight. Turned down: to begin
 *       there, since a latch that a button pulls in would never fly. Held by {@code
 *       SwitchedOnTest}.
 *   <li><b>An engine that is off on purpose has not stopped.</b> Its minutes at rest count for no
 *       endurance, and a restart that the flight has and that fails is a stop then. A phase that is
 *       held with the engine off is flown to its end and the next with the engine on is held. Held
 *       by {@code StarterTest}.
 *   <li><b>Every story ends, and the device that flips is named.</b> Held by {@code ChatterTest},
 *       and by {@code HostileCircuitsTest} with relays, packs, converters and alternators joined at
 *       random. More load or less battery may last longer only where it makes somebody shed
 *       earlier, or makes something trip or stop, and the story shows it: {@code
 *       ActedEnduranceTest}.
 *   <li><b>A story breaks off where it cannot be computed, and its list is short.</b> {@code
 *       Timeline.tellAsFar} tells what comes before; its endurance is {@code Endurance.Untold}. Of
 *       rounds of events that come again and again one is told, with the count and the period of
 *       the rest; no list is longer than a thousand events, no trace than some thousand points
 *       (every dip and peak kept). A chafed starter wire of Sandpiper took 139 lines with a late
 *       pilot, and takes 36. Held by {@code BrokenOffTest} and {@code RepetitionsTest}.
 *   <li><b>Energy and charge of a story must balance</b> within 1e-5, or the story is refused.
 *       Usual is 2.5e-9; the worst in Sandpiper is 3e-7, across a kink. Powers are integrated with
 *       the weights of the step that moves the charges. What the batteries gave is the area under
 *       their open-circuit curves, computed from the charges alone. The energy that flows is
 *       counted as 10 mW at least, since a dead aircraft only adds up rounding. Held by {@code
 *       BalanceTest} and {@code DeadAircraftTest}.
 *   <li><b>Margins that can be said once are read together.</b> A device says what it watches while
 *       its state lasts ({@code Watch}: a voltage, a current), and {@code MarginTable} reads all of
 *       them in one pass. In the thorough run, where all assertions are on, each reading is held
 *       against the device's own {@code margin}. What is a matter of yes or no is not asked within
 *       a step.
 *   <li><b>An instant at which nothing happened costs a glance.</b> After a step only charges and
 *       heats have moved, so laws, watches and deadlines stand as they did; whatever else changes
 *       something settles twice in a row, and then all of it is taken anew. Held, where assertions
 *       are on, by {@code MarginTable.isCurrent}; and by {@code FrozenReportsTest}.
 *   <li><b>A dip within a step is looked for</b> where the margins, read at the stages of the step,
 *       come nearer to 0 than they move about. Then the step is examined at every eighth. Shorter
 *       dips may be missed. Held by {@code AdvanceTest}.
 *   <li><b>Two strides: a quick one for comparing, an exact one for proofs.</b> The quick stride
 *       (order 3(2), tolerance 6e-7) needs 0.46 of the solutions of the old exact one. On Sandpiper
 *       every event comes in the same order and within 8e-5 of its time; of 4,000 stories of
 *       aircraft drawn by lot, three differ by more than 1e-4, at most 9e-4: where a voltage hardly
 *       falls when it crosses its limit. Where an endurance or an interruption lies within a
 *       thousandth of a limit, {@code Judge} has the exact story decide. Turned down: a looser
 *       tolerance of the formulas of order 5(4), which saves little and errs more (1e-5 moves a
 *       time by 1.9e-2). Held by {@code QuickStrideTest}.
 *   <li><b>Metal that leads nowhere is left out, and what leaves the same is told once.</b> A wire
 *       open and the fuse in its line blown are one circuit: the story of one is that of the other
 *       but for the name. Left out is only metal of parts that are nothing else, at whose loose end
 *       nobody measures. It spares Sandpiper one failure in nine. Who looks at a story sees
 *       everything all the same: it is played again, whole. Turned down: leaving out the contacts
 *       of a contactor, of which the story says that they drop out. Held by {@code
 *       AlikeFailuresTest}.
 *   <li><b>Sets of failures are told quickly and only as far as it takes to land.</b> The exact
 *       time line tells three cases to the end: a set within a hundredth of that time, a set that
 *       stops an engine which may yet come back, and a set that cannot be told quickly. It also
 *       tells the pair that is printed as a story. All other rows of {@code --pairs} rest on the
 *       quick answer. Held by {@code ConditionsTest}, which compares it with the exact answer.
 *   <li><b>Events are foretold for each margin by a parabola</b> through the readings at the start,
 *       the last stage but one and the end of a step, and found inside the one full step: three
 *       looks for most. Steps that end at a deadline go by the mean of the slopes at both ends, two
 *       solutions instead of three or six. Turned down: a first glance along the tangent of every
 *       step; it served one step in eight and cost a tenth of all solutions.
 *   <li><b>A step is as long as its error allows, and the order of parts hardly matters.</b> Event
 *       times mostly differ by less than 1e-7 of their value from those at a tolerance of 1e-11, by
 *       3e-5 in the worst story of Sandpiper (a battery that is overcharged for 40 minutes). In
 *       random aircraft the order of parts moves times by less than 1e-6, and other steps by less
 *       than 3e-6, most where a step crosses the corner between charging and discharging and the
 *       voltage then hardly falls. A step length that is remembered must also grow along straight
 *       ways; otherwise a story goes on in tiny steps after one hard kink. Turned down: a looser
 *       tolerance (5e-9 for 3e-10), which saves a sixth of the time and moves event times by
 *       2.5e-6. Held by {@code RandomInvarianceTest} and {@code AdvanceTest}.
 *   <li><b>A hand does one thing at a time, and the story says when it was for nothing.</b> Levers
 *       and loads that are shed are single strokes at the study's pace. A move after which every
 *       current is what it was is told as such: a pilot who has done something believes that he has
 *       changed something. A key that springs back works only while it is held, and the story says
 *       for how long. Held by {@code MovesTest}, {@code HandEffectTest} and {@code StarterTest}.
 * </ul>
 */
@NullMarked
package stillturning.story.timeline;

import org.jspecify.annotations.NullMarked;
