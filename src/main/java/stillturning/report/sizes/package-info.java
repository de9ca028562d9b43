/**
 * What a check of sizes found, as sentences and tables. In: sizing reports. Out: sentences, and
 * tables of columns that terminal, file, page, screen and other programs read. Adds nothing to the
 * results; knows no terminal and no page.
 */
@NullMarked
package stillturning.report.sizes;

import org.jspecify.annotations.NullMarked;
