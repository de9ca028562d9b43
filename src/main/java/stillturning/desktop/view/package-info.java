/**
 * What the areas of the desktop share: what an area is, what it may ask of the window, colours and
 * letters. Each area has a package inside, and {@code window} puts them together. Shows what {@code
 * desktop.viewmodel} says and passes on what the user does; holds no knowledge of its own.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What has no room beside each other is folded under tabs</b> ({@code Folded}), measured
 *       in heights of a letter, so that larger letters and a smaller window are one case. Words go
 *       on in the next line, tables keep a least height and their pane scrolls, and a window is
 *       never smaller than 1024 by 700, or 640 by 400 times the scale. Turned down: smaller letters
 *       where there is less room. {@code AreasFitTest} walks every area for what is cut, out of
 *       sight, too faint or without a name.
 *   <li><b>Contrast is that of WCAG 2.1</b>: words 4.5 to 1, borders of fields and rings of focus 3
 *       to 1, on light and on dark paper. Held by {@code ContrastTest} and {@code AreasFitTest}.
 * </ul>
 */
@NullMarked
package stillturning.desktop.view;

import org.jspecify.annotations.NullMarked;
