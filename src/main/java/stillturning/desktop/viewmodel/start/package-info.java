/** How a study begins: by a few questions, from a demo, or where the user left off. */
@NullMarked
package stillturning.desktop.viewmodel.start;

import org.jspecify.annotations.NullMarked;
