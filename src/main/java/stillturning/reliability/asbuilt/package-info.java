/**
 * A built aircraft held against what was predicted of it. In: predictions, what instruments showed,
 * logs of discharge tests. Out: what keeps to its prediction and what does not, and values that
 * follow from what was measured, each with its uncertainty. Knows no file and no words for people.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A discharge is fitted with the battery that stories are told with</b>: the same curve of
 *       its chemistry, the same loss of charge at high currents, the same temperature. Free are its
 *       capacity, its resistance and the charge with which the test begins, which may lie a little
 *       beyond full or empty, so that a full battery is no bound at which errors mean nothing. Held
 *       by {@code DischargeFitTest}: of 600 simulated logs the intervals of 95 % hold the truth in
 *       about 95 %.
 *   <li><b>Capacity, resistance and first charge are fitted at once</b>, and it is said how the
 *       errors of the first two go together; their ellipse of 95 % is held by the same logs. Two
 *       values of a ground test, such as a load's current and a wire's resistance, are fitted at
 *       once where no single one explains as much; an interval then counts that the other is not
 *       known either. Values to which the readings answer alike are said not to be told apart, and
 *       no pair is made of them. Held by {@code SingleValueFitsTest} on 600 simulated tests.
 *   <li><b>What a log does not tell has no number.</b> A value whose interval is wider than half of
 *       it is not given; the other value is named from which the log cannot tell it apart.
 *   <li><b>Neighbouring readings that are off together are fewer readings.</b> Where what is left
 *       over of one reading says something of the next, every error is made larger by it.
 *   <li><b>An interval holds for noise alone.</b> It knows nothing of an instrument that reads a
 *       hundredth too much, nor of a battery unlike the curve of its chemistry; where the curve is
 *       off by more than {@link stillturning.reliability.asbuilt.FittedBattery#MOST_MISFIT_VOLTS},
 *       nothing is concluded.
 * </ul>
 */
@NullMarked
package stillturning.reliability.asbuilt;

import org.jspecify.annotations.NullMarked;
