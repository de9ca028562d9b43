/** The user's guide beside the window. */
@NullMarked
package stillturning.desktop.view.guide;

import org.jspecify.annotations.NullMarked;
