/**
 * What was found, printed: sentences, tables, pages, data files. In: an assessment. Out: text. Adds
 * nothing to the results, and puts the cautions on whatever goes into an aircraft.
 */
@NullMarked
package stillturning.report;

import org.jspecify.annotations.NullMarked;
