/**
 * How candidates are valued, for terminal, page and screen. In: an assessment. Out: tables and
 * sentences.
 */
@NullMarked
package stillturning.report.ranking;

import org.jspecify.annotations.NullMarked;
