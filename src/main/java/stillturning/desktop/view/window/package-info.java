/**
 * The window itself: menus, the bar of areas, notices, what is under way; puts the areas together.
 */
@NullMarked
package stillturning.desktop.view.window;

import org.jspecify.annotations.NullMarked;
