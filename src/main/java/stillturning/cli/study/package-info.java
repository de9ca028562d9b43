/** Which study, candidate or case the words of the user mean, and what is wrong with it. */
@NullMarked
package stillturning.cli.study;

import org.jspecify.annotations.NullMarked;
