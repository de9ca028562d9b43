/**
 * What a builder wants of an electrical system: how much each criterion counts, and from where to
 * where its values run. In: numbers. Out: {@link stillturning.model.goal.Preferences} and the
 * scales that suit a study that states none. Knows no candidate, so that none changes how another
 * is valued.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A scale runs between two stated values</b>, "as bad as I could accept" and "as good as I
 *       need", never between the worst and the best of the company, where a third candidate that
 *       nobody wants turns the order of two others. What is not stated comes from the study's own
 *       requirements and flight, or is a guess that says so. Held by {@code ReversalTest}.
 * </ul>
 */
@NullMarked
package stillturning.model.goal;

import org.jspecify.annotations.NullMarked;
