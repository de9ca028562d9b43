/**
 * Pictures on the screen: shown, moved, enlarged, pointed at, joined by dragging, printed. In: a
 * {@link stillturning.report.drawing.Picture} and where its things lie. Out: the keys of what
 * somebody points at. Knows no part, no study, no failure; what a key stands for is the caller's.
 */
@NullMarked
package stillturning.desktop.view.picture;

import org.jspecify.annotations.NullMarked;
