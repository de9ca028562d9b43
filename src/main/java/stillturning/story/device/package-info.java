/**
 * What the devices of a circuit share: the situation that they read, the laws that they set, the
 * journal that they write to. In: a circuit and the moment. Out: branches for the solver, events in
 * order. Knows no single device, no pilot, no engine.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What steadies an alternator is asked of the circuit.</b> A battery counts where a change
 *       of the alternator's current can get to it and back, through metal or forwards through
 *       diodes, against less than a stated resistance ({@code
 *       parts.element.Generator.steadyingOhms}). So every way to lose a battery, on either side of
 *       it, is one state with one outcome, and a battery behind a diode isolator steadies. Turned
 *       down: a path of metal from plus to plus, which does not see a lost minus; and the slope of
 *       the charging law, in which a full battery has tens of ohms, though its plates take up any
 *       current for a tenth of a second. Held by {@code SteadyingTest} and, over a thousand
 *       aircraft drawn by lot, {@code EqualCircuitsTest}.
 *   <li><b>A management that blocks only charging leaves a battery that steadies nothing.</b> A
 *       battery that is too cold gives current but takes none; no alternator then counts it as its
 *       battery. Every other limit disconnects it. A battery that comes and goes without end is
 *       chatter, and is taken as gone. Held by {@code ManagementStoryTest}.
 *   <li><b>An unsteady alternator is described as running on and played as gone.</b> Nobody knows
 *       the voltage of an alternator that has lost its battery. The worst case for every load is
 *       the load dump up to the clamp, and nothing after it. That is what is played, and the story
 *       says why; {@code structure} counts it in the same way. Turned down: playing on at the set
 *       point, where the least certain source could save the engine. Held by {@code
 *       AlternatorStoryTest}.
 *   <li><b>The field follows in steps.</b> What a wound alternator can deliver depends on the
 *       voltage of its field, but a law must not depend on another branch. So the output moves in
 *       twentieths, each an event with slack. The load dump is one step too: the voltage goes up by
 *       the share of the output that was dropped, for the stated time, and never above the clamp.
 *       Held by {@code AlternatorStoryTest}.
 *   <li><b>Heating is of the first order.</b> The heat of a protector is 0 cold and 1 where it
 *       opens. A steady load L, against the current that it carries continuously, takes the heat
 *       towards L². The time constant is the one with which a cold protector opens after exactly
 *       its published time. Heat from the current before shortens that time; this is the model, and
 *       no publication says it. An electronic trip counts instead, up above its threshold and down
 *       below. Wires have two such heats, so joined that a large current follows the energy law
 *       (ICEA form, Onderdonk) and a small one the steady limit (table 11-9, Preece). What is
 *       carried forward is the <i>share of the way</i> to opening at the current of the last event.
 *       A steady current moves it along a straight line, so the step control pays nothing for the
 *       exponential. Cooling is followed in closed form from event to event. Turned down:
 *       integrating the heat itself, which costs three times the network solutions; and one I²t for
 *       all currents, which contradicts the curves below 200 %. Held by {@code HeatTest}, {@code
 *       WireStoryTest}, {@code WireHeatingTest} and {@code DeratingTest}.
 *   <li><b>A motor starts at its worst moment.</b> A story draws the average of what runs now and
 *       then (gear, bilge, flaps); its start is asked about beside it, by {@code WorstStart}, where
 *       it can matter: at every instant after an event from which things last, and again after each
 *       tenth of the time to land, until that has passed since the first sign. Between those
 *       instants only a charge moves, and a start that falls into the milliseconds of a protector's
 *       race is two rare moments at once. A rotor that stands is the resistance of its winding; the
 *       field of an alternator, which moves in tenths of a second (from the length of a load dump),
 *       allows no more current than before, so an alternator alone cannot take up a start; magnets
 *       give what they can. Asking costs two solutions of the network. Only a start after which the
 *       engine lacks something for longer than it rides through, or something opens, is played; the
 *       worst such story is the one that is told, and names the motor. Turned down: a start in
 *       every story, which costs three times as much and tells what nobody has to know. Held by
 *       {@code MotorStartTest}.
 *   <li><b>Selectivity is played.</b> When a protector opens, {@code TripRivals} asks every other
 *       one that was heating how soon a fast sample of it would have opened. Only where that beats
 *       a slow sample of the winner does {@code assess} tell the failure again, with the winner at
 *       its slow edge and all others at their fast edge ({@code Setting.Race.against}): about one
 *       failure in twenty-five of Sandpiper. What then opens before the winner, although it
 *       typically does not, is a pair that is not selective. Turned down: comparing curves on
 *       paper, which knows neither preheating nor the effect of the sagging voltage. Held by {@code
 *       ToleranceTest}.
 *   <li><b>A load that goes over to its own battery says so.</b> Displays with cells of their own
 *       show that they run on them, and keep showing while the bus that runs the engine dies: in
 *       report CEN16LA167 (NTSB) that was the first sign, two minutes before the engine stopped. So
 *       it is an event, and a sign where the load is one whose stopping is noticed. A loss of less
 *       than a second does not count: nobody reads as fast. Held by {@code OwnBatteryTest}.
 *   <li><b>A starved load goes on drawing</b>, as the resistance that it had at its minimum
 *       voltage. Turned down: letting its current drop to nothing, which makes supply and loads
 *       oscillate, and which is less cautious for endurance. Held by {@code HostileCircuitsTest}.
 *   <li><b>A motor that has stopped comes up from rest.</b> One that runs all the time and has lost
 *       its supply draws its inrush, the resistance of its winding, until it has had its voltage
 *       for as long as the inrush lasts; only then does it work. An alternator is supposed to
 *       follow that. Held by {@code HandEffectTest}.
 * </ul>
 */
@NullMarked
package stillturning.story.device;

import org.jspecify.annotations.NullMarked;
