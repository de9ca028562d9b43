/**
 * What failures do together: the search that may go on where it stopped, its sheets, command
 * run-up.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A search that is called off is kept block by block</b> ({@code Resumption}), under the
 *       fingerprint of the study's files. Blocks of one order do not depend on the largest order
 *       asked for, so a file of pairs also serves the run-up card and {@code --order 3}. Held by
 *       {@code JointCommandsTest}.
 * </ul>
 */
@NullMarked
package stillturning.cli.joint;

import org.jspecify.annotations.NullMarked;
