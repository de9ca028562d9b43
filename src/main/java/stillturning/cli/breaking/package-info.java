/** Command break: one class a question, chosen by the options given. */
@NullMarked
package stillturning.cli.breaking;

import org.jspecify.annotations.NullMarked;
