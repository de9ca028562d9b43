/**
 * Pictures on the screen: shown, moved, enlarged, pointed at, joined by dragging, printed. In: a
 * {@link stillturning.report.drawing.Picture} and where its things lie. Out: the keys of what the
 * user points at. Knows no part, no study, no failure; the meaning of a key is the caller's.
 */
@NullMarked
package stillturning.desktop.view.picture;

import org.jspecify.annotations.NullMarked;
