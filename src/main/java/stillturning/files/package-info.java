/**
 * Studies and candidates as files. In: a study's folder. Out: a study and where its values come
 * from, or every problem at once. Knows no solver, no time line, no screen.
 */
@NullMarked
package stillturning.files;

import org.jspecify.annotations.NullMarked;
