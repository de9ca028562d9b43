/**
 * Whether a candidate can be built as drawn: load analysis, wires, protectors, contacts, cranking,
 * weight, lists, and what would mend what is wrong. In: a study, a candidate, how it is laid. Out:
 * a {@link stillturning.sizing.result.SizingReport}. Knows no file, no screen, no words: only rules
 * and numbers.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A wire is sized for what can flow for long, a protector for what a short drives.</b>
 *       {@code CurrentSurvey} plays every single failure in every phase and takes the steady
 *       currents. Those that a short drives count apart, and a short that nothing ends is a finding
 *       of its own. Currents come from the solved network, with every load running that may run.
 *       Only the drop of a load's wires is computed with the other loads at their average, since
 *       the published limit is for everyday use. Held by {@code SizingTest} and {@code
 *       SandpiperSizesByHandTest}.
 *   <li><b>A managed battery is asked what it takes in when it comes nearly empty.</b> An
 *       alternator drives into a battery whatever its voltage lacks, up to all that it can give; a
 *       lithium battery that comes low, after a charger that does not suit it, takes most of that,
 *       and its management disconnects it. An alternator with a fed field does not hold the bus
 *       alone then, so with nothing broken everything is dark: event 20170702X73412 (NTSB) tells of
 *       it. So each battery whose management limits the charging current is tried at a tenth of its
 *       charge (a guess). Held by {@code LowBatteriesTest}.
 *   <li><b>What hangs on an alternator by metal alone is held at its set point.</b> A battery above
 *       what its makers charge it with, and a guard at or below it, are told; behind a diode a
 *       battery has less, and is not asked about. Held by {@code SetPointTest}.
 *   <li><b>A larger alternator mends only what its current limits.</b> One that holds its set point
 *       gives what the circuit draws at that voltage; a battery that falls all the same is behind
 *       too much drop, such as a diode's, or wants a higher voltage. {@code SetPoint} asks that of
 *       the state in which the sum was taken. Held by {@code SizingTest}.
 *   <li><b>A return is told whose short it carries.</b> At the structure's voltage its own chafing
 *       shares a current with the structure and drives none. Held by {@code StarterMainTest}.
 *   <li><b>A wire that only a slow protector of its class lets grow too hot is one second look.</b>
 *       Where a wire was in the race that a short begins, the failure is played again with every
 *       protector at its slow edge. What then grows too hot is told once for a candidate, with the
 *       worst wire and their number: all hang on one thing. Turned down: calling it wrong, since
 *       table 11-3 pairs those sizes, and the slow edge of ordinary breakers is a guess. Held by
 *       {@code SizingTest}.
 *   <li><b>A protector that the engine hangs on wants room.</b> Engines were lost in flight with
 *       nothing broken, on protectors that carried all of their rating or a little more. So one
 *       that stops the engine at once when it opens is told first where it carries more than its
 *       rating, and is worth a look from 80 % on (common practice). What is so with nothing wrong
 *       comes before what it takes a short to show. Held by {@code SizingTest} and {@code
 *       ReplayTest}.
 *   <li><b>A protector that lets its wire burn is a mistake that can be computed.</b> A rating
 *       above what the wire carries alone in free air at 20 °C until its insulation is at 150 °C
 *       protects nothing wherever the wire lies, for a protector carries its rating without end
 *       ({@code Unguarded}). It comes first in every answer and gives the exit code of a finding.
 *       Turned down: refusing the study, since one slip then hides every other answer, the remedy's
 *       among them; and a second look, since nobody means it. Held by {@code UnguardedTest}.
 * </ul>
 */
@NullMarked
package stillturning.sizing;

import org.jspecify.annotations.NullMarked;
