/**
 * What is on the printed page, as finished text that the templates only set. In: nothing. Out:
 * plain records of words and pictures. Knows no candidate, no volt, no rank.
 *
 * <p>Decision: <b>labels of wires have a size in millimetres and letters that shrink</b>, since a
 * sleeve has a length: a name that is too long for its line is set smaller, then broken, and never
 * cut. Held by {@code PdfSetterTest} on both papers.
 */
@NullMarked
package stillturning.report.page;

import org.jspecify.annotations.NullMarked;
