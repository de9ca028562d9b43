/** The command that looks for what would mend a candidate. Knows nothing of other commands. */
@NullMarked
package stillturning.cli.suggest;

import org.jspecify.annotations.NullMarked;
