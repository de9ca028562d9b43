/**
 * The command line: one command a class, words in, results and an exit code out. In: arguments and
 * streams. Out: text on those streams. Works nothing out itself: reads, asks for an assessment,
 * prints reports.
 */
@NullMarked
package stillturning.cli;

import org.jspecify.annotations.NullMarked;
