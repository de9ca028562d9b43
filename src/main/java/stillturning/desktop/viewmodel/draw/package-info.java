/**
 * The open candidate as a screen shows it while it is drawn: its diagram with loose ends, what was
 * found wrong, what can be added, the values of what is selected, and its text. In: the open study.
 * Out: properties, lists and values in words. Knows no scene; {@code files} knows what may be
 * written where, and {@code desktop.draft} how it is written.
 */
@NullMarked
package stillturning.desktop.viewmodel.draw;

import org.jspecify.annotations.NullMarked;
