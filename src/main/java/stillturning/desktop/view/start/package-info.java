/**
 * The area in which a study begins or is opened. Knows the questions of {@code
 * desktop.viewmodel.start}, and no file.
 */
@NullMarked
package stillturning.desktop.view.start;

import org.jspecify.annotations.NullMarked;
