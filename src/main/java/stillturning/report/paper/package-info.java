/**
 * What the builder lays before a counsellor, as chapters of text, tables and drawings. In: an
 * assessment and what was asked beside it. Out: a {@link stillturning.report.page.Document}. Knows
 * no paper, no HTML and no PDF.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Two pages stand alone.</b> Who reads no further must be able to ask the right questions:
 *       so the first says what the leader still breaks as loudly as why it leads, and the second
 *       what was turned down and what nobody looked at.
 *   <li><b>People read labels.</b> Names of parts, levers and cues in sentences are replaced by
 *       what a person calls them ({@code PrintedNames}); plain words are left alone, since an
 *       identifier without a hyphen reads like its label.
 *   <li><b>A remedy is a fact of the failure's shape</b>: what opens needs a second way, what
 *       shorts needs something that parts it from the rest, what goes wrong otherwise needs a
 *       guard; beside it stands what the same failure does to the other candidates, which were
 *       played, so that the reader sees the remedy at work. Turned down: a remedy by kind of part,
 *       which would have to be written again for every kind.
 *   <li><b>The worst ten stories, of the chosen candidate only.</b> More are read by nobody on
 *       paper; the page has them all.
 *   <li><b>A checklist that is missing says so in its place</b>, with what was played of the
 *       trouble and what a procedure would need. A single move that was played to save the engine
 *       is offered as a proposal and marked as one: it was played after one failure, and nobody has
 *       written it. Turned down: printing it as a checklist, which would be an act that nobody has
 *       thought through. Held by {@code UnwrittenMovesTest} and {@code CounsellorPaperTest}.
 *   <li><b>What was not analysed has a chapter</b>, since the dangerous part of a report is what
 *       its reader thinks it covers.
 * </ul>
 */
@NullMarked
package stillturning.report.paper;

import org.jspecify.annotations.NullMarked;
