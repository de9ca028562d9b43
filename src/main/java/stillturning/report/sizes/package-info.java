/**
 * What a check of sizes found, as sentences and tables. In: sizing reports. Out: sentences, tables
 * of words and numbers, and those as CSV. Adds nothing to the results; knows no terminal and no
 * page.
 */
@NullMarked
package stillturning.report.sizes;

import org.jspecify.annotations.NullMarked;
