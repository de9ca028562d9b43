/** Commands decide and explain: the ranked comparison, on the terminal and as a page. */
@NullMarked
package stillturning.cli.decide;

import org.jspecify.annotations.NullMarked;
