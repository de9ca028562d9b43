/**
 * What the areas of the desktop share: what an area is, what it may ask of the window, colours and
 * letters. Each area has a package inside, and {@code window} puts them together. Shows what {@code
 * desktop.viewmodel} says and passes on what the user does; holds no knowledge of its own.
 */
@NullMarked
package stillturning.desktop.view;

import org.jspecify.annotations.NullMarked;
