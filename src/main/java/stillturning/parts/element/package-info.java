/**
 * What a part does electrically, one behaviour a record: two terminals, constants, limits. In:
 * plain SI numbers. Out: descriptions that a time line can play. Knows no part kind, no network
 * solution, no failure, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The curve of a battery consists of straight pieces.</b> Open-circuit voltage ({@code
 *       RestVoltage}) is straight between published points, and resistance has its corners at the
 *       same charges. The end of each piece is an event of the time line, so the step control never
 *       meets a kink. Turned down: smoothing the table, which would put a number between two
 *       published ones that nobody published. Held by {@code BatteryLawsTest} and {@code
 *       ClosedFormsTest}.
 *   <li><b>A lead-acid battery ends at its end-of-discharge voltage.</b> Below 10 % charge the
 *       curve leaves the published rest voltages and goes down to 1.75 V a cell, because a rated
 *       capacity is defined by that voltage under load. Held by {@code BatteryLawsTest}.
 *   <li><b>A battery accepts the current that is offered, but not without resistance.</b> Up to the
 *       current that its chemistry accepts at its charge ({@code Acceptance}), only the internal
 *       resistance counts. As much current again needs 2 V more. Beside that, a lead-acid battery
 *       turns current to gas by an exponential law of the voltage ({@code Overcharge}), straight
 *       between points. So a full battery floats at a few thousandths of its one-hour current, and
 *       holds a runaway alternator somewhere between 16 and 18 V; where depends on the battery, so
 *       that the law comes in three that span what was published. A battery that still takes charge
 *       sits lower by itself. Gas adds no charge. Once half of the capacity has turned to gas, the
 *       battery is lost (a guess); otherwise a runaway would seem to harm nothing. Turned down: a
 *       fixed limit at the acceptance current (a runaway then meets no resistance), and one slope,
 *       from the rest voltage (a full battery then takes 13 A without end) or from 2.4 V a cell (a
 *       runaway is then held at 15.5 V, where makers' manuals say 16 to 18 V). Held by {@code
 *       OverchargeTest}, {@code StorageTest}, {@code BatteryLawsTest}, {@code AlternatorStoryTest}
 *       and {@code TransientReferenceTest} (38 of 39 stories, computed by a general circuit
 *       simulator, which could not solve the other).
 *   <li><b>Temperature and age are factors on the stated battery.</b> The temperature of the zone
 *       counts. Self-heating ({@code Warmth}) is followed only where a management watches the
 *       temperature and the weight of the battery is known, since it costs network solutions. With
 *       age, resistance grows as capacity shrinks. The factors are from memory, and say so.
 *       Endurance never rises with less capacity, health or charge. With more resistance it can
 *       rise: resistive or starving loads draw less, and two batteries share more evenly. Held by
 *       {@code RandomEnduranceTest}, {@code EnduranceTest} and {@code ManagementStoryTest}.
 * </ul>
 */
@NullMarked
package stillturning.parts.element;

import org.jspecify.annotations.NullMarked;
