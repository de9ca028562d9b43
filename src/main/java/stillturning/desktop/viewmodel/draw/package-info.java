/**
 * The open candidate as a screen shows it to somebody who draws it: its diagram with loose ends,
 * what is to be said about it, what can be added, the values of what is chosen, and its text. In:
 * the open study. Out: properties, lists and values in words. Knows no scene; what may be written
 * where is known by {@code files}, how it is written by {@code draft}.
 */
@NullMarked
package stillturning.desktop.viewmodel.draw;

import org.jspecify.annotations.NullMarked;
