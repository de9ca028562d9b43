/**
 * What the areas of the desktop share: what an area is, what it may ask of the window, colours and
 * letters. Each area has a room inside, and {@code screen.window} puts them together. Shows what
 * {@code desk} says and passes on what the user does; holds no knowledge of its own.
 */
@NullMarked
package stillturning.desktop.view;

import org.jspecify.annotations.NullMarked;
