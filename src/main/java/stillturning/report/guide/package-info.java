/**
 * The user's guide: one page for each question that people ask, with examples that the program
 * itself made. Terminal and window show the same pages.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>An example is what the program prints today.</b> Each block of a page names its command
 *       and which lines of the answer are shown; {@code GuideTest} runs the command and holds the
 *       lines. Turned down: examples written by hand, which are wrong after the next change.
 *   <li><b>Pages are Markdown that can be read as it is</b>, so that a terminal needs no second
 *       text.
 * </ul>
 */
@NullMarked
package stillturning.report.guide;

import org.jspecify.annotations.NullMarked;
