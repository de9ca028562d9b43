/**
 * Results as text for a terminal. In: an assessment and what was found elsewhere. Out: lines and
 * tables. Knows no page, no screen, no stream.
 */
@NullMarked
package stillturning.report.terminal;

import org.jspecify.annotations.NullMarked;
