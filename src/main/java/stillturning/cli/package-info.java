/**
 * The command line: one command a class, words in, results and an exit code out. In: arguments and
 * streams. Out: text on those streams. Computes nothing itself: reads, asks for an assessment,
 * prints reports.
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
package stillturning.cli;

import org.jspecify.annotations.NullMarked;
