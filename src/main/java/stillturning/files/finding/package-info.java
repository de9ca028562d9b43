/**
 * What is wrong or remarkable in the files, each at its place. In: places and words. Out: problems
 * and remarks in the order of the files. Knows no meaning of what is written.
 */
@NullMarked
package stillturning.files.finding;

import org.jspecify.annotations.NullMarked;
