/**
 * An abstract diagram before anything has a position: symbols with ports, and lines between them.
 * In: names, texts and glyphs. Out: what a layout places. Knows no coordinates, no part, no model.
 */
@NullMarked
package stillturning.report.drawing.diagram;

import org.jspecify.annotations.NullMarked;
