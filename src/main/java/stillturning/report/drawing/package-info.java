/**
 * Pictures of abstract diagrams and of values over time. In: symbols and lines, or series and
 * events, with their texts. Out: a {@link stillturning.report.drawing.Picture} of strokes and
 * texts, which writes itself as SVG. Knows no part, no model, no file, no screen.
 */
@NullMarked
package stillturning.report.drawing;

import org.jspecify.annotations.NullMarked;
