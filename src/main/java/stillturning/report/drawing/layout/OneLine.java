package stillturning.report.drawing.layout;

import java.util.HashMap;
import java.util.Map;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;

/** One-line diagrams: sources on the left, loads on the right, every symbol and line once. */
public final class OneLine {
    private OneLine() {}

    /**
     * Lays out and draws a diagram. The places depend on symbols, lines and texts, not on looks.
     *
     * @see "IEC 60617 for the manner of the symbols (from memory, unverified)"
     */
    public static Picture of(Diagram diagram) {
        return laidOut(diagram).picture();
    }

    /** Lays a diagram out, to be drawn in several states and to be pointed at. */
    public static Sheet laidOut(Diagram diagram) {
        return new Sheet(diagram, LayeredLayout.of(diagram));
    }

    /**
     * Lays a diagram out so that what was there before is found again: symbols keep their order
     * from top to bottom.
     */
    public static Sheet laidOut(Diagram diagram, Sheet previous) {
        return laidOut(diagram, previous, Map.of());
    }

    /**
     * The same, with a place for what nothing is joined to yet.
     *
     * @param wanted where on the picture the middle of such a symbol is wanted, by its id
     */
    public static Sheet laidOut(Diagram diagram, Sheet previous, Map<String, Point> wanted) {
        Map<String, Point> inLayout = new HashMap<>();
        wanted.forEach((id, at) -> inLayout.put(id, Geometry.inLayout(diagram, at)));
        return new Sheet(diagram, LayeredLayout.of(diagram, previous.placed().boxes(), inLayout));
    }
}
