/**
 * The ground test plan of a candidate as sentences and tables: what to open, what must happen, what
 * instruments must show, and blanks for what they do show. In: a plan. Out: blocks for paper, page
 * and terminal, and tables that a spreadsheet reads. Adds nothing to the plan.
 */
@NullMarked
package stillturning.report.groundtest;

import org.jspecify.annotations.NullMarked;
