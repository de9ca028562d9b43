/**
 * How likely it is that at least one of many sets of events comes true. In: cut sets as plain event
 * numbers, and how often each event occurs. Out: probabilities with their bounds, importances,
 * ranges. Knows no part, no engine, no file, no prose.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A union is counted, not estimated.</b> {@code DecisionDiagramBuilder} builds a decision
 *       diagram. Events that can stand for each other in every set count as one ({@code
 *       InterchangeableEvents}), and events that appear together are asked together ({@code
 *       VariableOrder}). Beyond the limit on nodes the answer is bounded and says so; the bounds
 *       then lie within a percent for anything rare. Turned down: asking in the order of use, which
 *       took twice the nodes and more; and sums for rare events alone. Held by {@code CountedTest}
 *       (every combination counted) and {@code HandbookTreesTest}.
 *   <li><b>Latent events with the same inspection age together.</b> Their joint probability is
 *       averaged over the common age by Gauss-Legendre. Turned down: the product of their means,
 *       which is a quarter too low for a pair. Different intervals count as out of step. Held by
 *       {@code LatentTest}.
 *   <li><b>Rates of one source are drawn together</b>; otherwise a pair of equals would look better
 *       known than one of them. Held by {@code ChanceRangesTest}.
 *   <li><b>The figure is the mean of its range</b>, and so E[λ²] where two rates are one number,
 *       not E[λ]²: 7 times as much within a factor of 10. {@code MeanFlights} takes the sum over
 *       the sets in closed form, and only what the union and certainty take off it from draws, most
 *       of them where the rates are likely to be. Turned down: the mean of plain samples, which
 *       misses the far end of the spread where most of the mean is; and rates at their means.
 *       Importances and inspection intervals are lifted by the same factor. Held by {@code
 *       MeanOfRatesTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.chance;

import org.jspecify.annotations.NullMarked;
