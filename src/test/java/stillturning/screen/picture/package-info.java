/** Pictures shown on a screen that nobody sees. */
@NullMarked
package stillturning.screen.picture;

import org.jspecify.annotations.NullMarked;
