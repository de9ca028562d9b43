/**
 * What was found about failures together and hidden, as running text: pairs and chances, common
 * causes and shape, latent failures, the run-up card. In: what the rooms below found. Out: blocks
 * of words that page and terminal set alike.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Sets are told in rows of what can stand for each other.</b> Events that make minimal
 *       sets with exactly the same others are one class, and a row is "any one of each class".
 *       Nothing is left out and nothing is put in, since every choice is a set. Sandpiper's
 *       thousand pairs become some two hundred rows. Held by {@code SetGroupsTest}.
 *   <li><b>Page and terminal set the same {@link stillturning.report.page.Block}s</b>, so that they
 *       cannot say different things.
 * </ul>
 */
@NullMarked
package stillturning.report.joint;

import org.jspecify.annotations.NullMarked;
