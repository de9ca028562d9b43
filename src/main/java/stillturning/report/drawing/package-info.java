/**
 * Strokes and texts on a sheet, and how they are written down. In: marks with positions and
 * colours. Out: a {@link stillturning.report.drawing.Picture} that writes itself as SVG or PNG.
 * Knows no diagram, no plot, no part, no model, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A drawing keeps its order, not its places.</b> A new layout gets the heights of the one
 *       before as constraints within each layer, so that an edit swaps nothing within it. In which
 *       layer a chain with room to spare falls is still chosen by the layout library. Turned down:
 *       fixed places, which leave no room for what is new. Held by {@code SteadyLayoutTest}.
 *   <li><b>A stretch of a story gets a panel of its own if that tells events apart.</b> {@code
 *       TimeWindows} counts how many more events each stretch separates; the beginning comes first.
 *       Turned down: a logarithmic axis, on which the last second before the engine stops is as
 *       narrow as a line. Held by {@code TimePlotTest}.
 * </ul>
 */
@NullMarked
package stillturning.report.drawing;

import org.jspecify.annotations.NullMarked;
