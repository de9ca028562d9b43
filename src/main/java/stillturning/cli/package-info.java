/**
 * The command line: words in, results and an exit code out. In: arguments and streams. Out: text on
 * those streams. Works nothing out itself: each command parses, reads, asks for an assessment and
 * prints. Inside: {@code terminal} is what a command writes to, {@code study} what its words mean,
 * the others hold a command or two each.
 */
@NullMarked
package stillturning.cli;

import org.jspecify.annotations.NullMarked;
