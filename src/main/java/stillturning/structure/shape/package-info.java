/**
 * What of a candidate is left once names and order are forgotten. In: a candidate. Out: a {@link
 * stillturning.structure.shape.CanonicalGraph}, equal to another exactly if one candidate can be
 * renamed into the other. Knows no story, no failure, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Equal means that an exact comparison found a renaming.</b> Colours are refined from the
 *       labels until they split no further; what they leave open is tried, one vertex held against
 *       each that it could be, and a renaming counts only once every label and every edge was
 *       compared. Colours are numbers of 64 bits: two that fall together by chance cost time, never
 *       the answer. Turned down: the colours alone, which take two rings of three for one of six.
 *       Held by {@code CanonicalGraphTest} against every permutation.
 *   <li><b>Whatever may matter is in the label.</b> Of a part only its name and what people call it
 *       are left out; zone, weight and price stay. A load keeps its name, because the engine's
 *       logic asks for it. Inputs of a load are alike, because the load treats them alike. Moves
 *       and procedures keep their order. So candidates that are one to a pilot may come out as two,
 *       which costs an assessment; two that behave otherwise never come out as one. Held by {@code
 *       CandidateFormTest}.
 *   <li><b>What parts share beside their joints is left out</b> (holes, bundles, makes), because no
 *       single failure of a part asks for it.
 * </ul>
 */
@NullMarked
package stillturning.structure.shape;

import org.jspecify.annotations.NullMarked;
