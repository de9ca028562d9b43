/**
 * A candidate as a one-line diagram. In: a candidate. Out: symbols and lines without a place. Knows
 * no failure, no result, no screen.
 */
@NullMarked
package stillturning.report.oneline;

import org.jspecify.annotations.NullMarked;
