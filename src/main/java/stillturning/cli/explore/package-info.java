/**
 * The command that looks for simpler layouts. In: a study. Out: the front, its picture, and on
 * demand files of what is on it.
 */
@NullMarked
package stillturning.cli.explore;

import org.jspecify.annotations.NullMarked;
