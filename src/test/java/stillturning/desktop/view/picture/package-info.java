/** Pictures shown on a screen that nobody sees. */
@NullMarked
package stillturning.desktop.view.picture;

import org.jspecify.annotations.NullMarked;
