/**
 * How sure an answer is: one failure told again and again with every uncertain value somewhere in
 * its range. In: the values and what can make the study with them. Out: an endurance from low to
 * high, the outcomes, and which values it depends on. Knows no file, no screen, no unit.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Ranges are sampled, each value independently and evenly.</b> The first dimensions are
 *       shifted Sobol points. The others are Latin hypercube columns, since there the Sobol points
 *       of a few hundred samples are in step with each other. The study is made again from its
 *       bound entries for each sample. Values of a part that contradict each other go half-way back
 *       to what is likely. Only masses, prices, failure rates and the files of other candidates are
 *       left out; they reach no story. Held by {@code QuasiRandomPointsTest} and {@code
 *       SamplingTest}, whose answer is known.
 *   <li><b>Shares come from forward selection on ranks.</b> Turned down: squared rank correlations,
 *       which drown in their own noise at 150 inputs. Held by {@code ContributionsTest}, whose
 *       answers are known.
 * </ul>
 */
@NullMarked
package stillturning.assess.ranges;

import org.jspecify.annotations.NullMarked;
