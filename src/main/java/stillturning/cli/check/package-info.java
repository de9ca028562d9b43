/** Command check: what is wrong with a study before anything fails. */
@NullMarked
package stillturning.cli.check;

import org.jspecify.annotations.NullMarked;
