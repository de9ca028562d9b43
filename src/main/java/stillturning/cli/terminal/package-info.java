/**
 * What a command writes to and asks on: results, progress, questions, exit codes. Knows no study.
 */
@NullMarked
package stillturning.cli.terminal;

import org.jspecify.annotations.NullMarked;
