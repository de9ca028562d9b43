/**
 * Strokes and texts on a sheet, and how they are written down. In: marks with positions and
 * colours. Out: a {@link stillturning.report.drawing.Picture} that writes itself as SVG or PNG.
 * Knows no diagram, no plot, no part, no model, no screen.
 */
@NullMarked
package stillturning.report.drawing;

import org.jspecify.annotations.NullMarked;
