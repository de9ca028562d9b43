/** What is done with the finished aircraft on the ground: command ground-test. */
@NullMarked
package stillturning.cli.groundtest;

import org.jspecify.annotations.NullMarked;
