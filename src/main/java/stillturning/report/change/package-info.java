/**
 * What differs between two states of a study, as sentences and tables. In: changed texts, two
 * assessments. Out: blocks, and JSON. Knows no file but its name.
 */
@NullMarked
package stillturning.report.change;

import org.jspecify.annotations.NullMarked;
