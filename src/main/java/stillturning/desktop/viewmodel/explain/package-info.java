/**
 * What the page for the talk with a counsellor holds, and the builder's own words on it. The page
 * is that of the command line, to the byte.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The page is asked for, not followed.</b> It is written on request from the last
 *       assessment and then marked as old, since parts of it take minutes. Long answers are kept
 *       with everything that they depend on ({@code KeptAnswers}), so other words of the builder
 *       cost only the setting of the page. Turned down: writing it again after every change. Held
 *       by {@code ExplainingTest}.
 * </ul>
 */
@NullMarked
package stillturning.desktop.viewmodel.explain;

import org.jspecify.annotations.NullMarked;
