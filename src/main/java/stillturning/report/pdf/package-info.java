/**
 * Sets a document on paper. In: a {@link stillturning.report.page.Document}. Out: the bytes of a
 * PDF. Knows no candidate, no volt, no rank.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Paper has a style sheet of its own</b> in CSS 2.1, colours written out: the setter knows
 *       no variables, no grid and no flexible boxes, and skips what it does not know. Turned down:
 *       the page's style sheet, which comes out as one column. {@code PdfSetterTest} expects that
 *       nothing is skipped.
 *   <li><b>The same document and date give the same bytes</b>: identifier, dates and metadata come
 *       from the document, none from the clock.
 *   <li><b>Tagged for readers of screens and archives at once</b> (PDF/UA-1 and PDF/A-3a, ISO
 *       14289-1 and ISO 19005-3, from memory): each drawing has its words beside it and each link
 *       says where it leads.
 *   <li><b>Nothing is fetched</b>: a name in a study may look like an address and stays a name.
 *   <li><b>Names are shown, not obeyed</b>: marks that turn the direction of writing and characters
 *       that a printer cannot show are replaced by a sign that can be seen; words too long for a
 *       line are broken anywhere.
 * </ul>
 */
@NullMarked
package stillturning.report.pdf;

import org.jspecify.annotations.NullMarked;
