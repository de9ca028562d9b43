/**
 * Diagrams placed and drawn. In: a diagram. Out: a position for every symbol, a route for every
 * line, and the picture of both. Knows no plot, no part, no model, no file, no screen.
 */
@NullMarked
package stillturning.report.drawing.layout;

import org.jspecify.annotations.NullMarked;
