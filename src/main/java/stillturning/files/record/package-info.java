/**
 * Measurements as files: the form that is filled in at the aircraft, the log of readings that an
 * instrument kept, and the record beside the study to which everything measured is added. In: what
 * is asked, texts. Out: what was filled in with its place, or every mistake at once. Knows no
 * prediction and no limit but as texts to print.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A form is a plain file in the notation of the study</b>, its blanks empty values and
 *       what is predicted beside them in comments. What stays empty is not measured. Turned down: a
 *       sheet for a spreadsheet alone, in which a unit is easily lost. Held by {@code
 *       MeasuredFormTest}.
 *   <li><b>The record grows and is never rewritten</b>: an entry is added behind the others, and
 *       the file keeps every char that it had. It stands in a folder of its own, {@code measured},
 *       since every file of the study's folder is a candidate. Held by {@code MeasuredFileTest}.
 *   <li><b>Logs are read as they come</b>: with commas, semicolons or tabs, with points or, where
 *       no comma separates, decimal commas, in seconds, minutes or clock times; what a number means
 *       is said by the head of its column. Units are never guessed. Held by {@code LogFileTest}.
 * </ul>
 */
@NullMarked
package stillturning.files.record;

import org.jspecify.annotations.NullMarked;
