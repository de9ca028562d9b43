package stillturning.report.drawing.layout;

import java.util.HashMap;
import java.util.Map;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;

/** One-line diagrams: sources on the left, loads on the right, every symbol and line once. */
public final class OneLine {
    /** Width over height below which layers would be folded more often than the eye follows. */
    private static final double NARROWEST = 1;

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
        return new Sheet(diagram, LayeredLayout.of(diagram), false);
    }

    /**
     * Lays a diagram out for a paper: where one row of layers would be too wide for it, they are
     * folded into two.
     *
     * @param shape width of the paper over its height
     */
    public static Sheet laidOut(Diagram diagram, double shape) {
        Folding folding = Folding.forPaper(Math.max(NARROWEST, shape));
        return new Sheet(diagram, LayeredLayout.of(diagram, Map.of(), Map.of(), folding), true);
    }

    /**
     * Lays a diagram out so that what was there before is found again: symbols keep their order
     * from top to bottom, and layers are folded where they were.
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
        Map<String, Box> before = previous.placed().boxes();
        Folding folding =
                previous.foldable()
                        ? Folding.before(
                                FoldedRows.of(previous.diagram(), previous.placed()).cuts(diagram))
                        : Folding.NONE;
        return new Sheet(
                diagram, LayeredLayout.of(diagram, before, inLayout, folding), previous.foldable());
    }
}
