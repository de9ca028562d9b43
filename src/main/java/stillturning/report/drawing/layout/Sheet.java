package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;

/** A diagram that has been laid out: its picture in any state, and where everything lies on it. */
public final class Sheet {
    private final Diagram diagram;
    private final PlacedDiagram placed;
    private final boolean foldable;
    private final Map<String, SymbolPosition> spots = new LinkedHashMap<>();
    private final List<Route> courses;

    Sheet(Diagram diagram, PlacedDiagram placed, boolean foldable) {
        this.diagram = diagram;
        this.placed = placed;
        this.foldable = foldable;
        Geometry geometry = new Geometry(diagram, placed);
        SymbolPositions found = new SymbolPositions(geometry);
        found.of(placed).forEach(spot -> spots.put(spot.symbol(), spot));
        List<Route> all = new ArrayList<>();
        for (PlacedDiagram.PlacedLine route : placed.routes()) {
            all.add(new Route(route.number(), route.line(), geometry.course(route)));
        }
        for (PlacedDiagram.PlacedSymbol owner : placed.symbols()) {
            for (GroundStub stub : owner.sized().stubs()) {
                all.add(hanging(stub, found.stubCourse(owner, stub)));
            }
        }
        all.sort(Comparator.comparingInt(Route::number));
        courses = List.copyOf(all);
    }

    /** The course of a line to a ground, which may also be drawn from the ground. */
    private Route hanging(GroundStub stub, List<Point> fromOwner) {
        DiagramLine line = diagram.lines().get(stub.line());
        List<Point> points = new ArrayList<>(fromOwner);
        if (line.fromSymbol().equals(stub.ground().id())) {
            Collections.reverse(points);
        }
        return new Route(stub.line(), line, points);
    }

    /** What was laid out. */
    public Diagram diagram() {
        return diagram;
    }

    /** The picture of the diagram as it was laid out. */
    public Picture picture() {
        return new DiagramPainter(diagram, placed).picture();
    }

    /**
     * The picture of the same diagram in another state, without a new layout.
     *
     * @throws IllegalArgumentException if more differs than looks and the positions of contacts
     */
    public Picture picture(Diagram shown) {
        if (!shown.takesTheRoomOf(diagram)) {
            throw new IllegalArgumentException(
                    "the diagram differs from " + diagram.id() + " as it was laid out");
        }
        return new DiagramPainter(shown, placed.showing(shown)).picture();
    }

    /** Where each symbol lies, by its id. */
    public Map<String, SymbolPosition> spots() {
        return Collections.unmodifiableMap(spots);
    }

    /** Where each line runs, in the diagram's order. */
    public List<Route> courses() {
        return courses;
    }

    PlacedDiagram placed() {
        return placed;
    }

    /** Whether its layers may lie in several rows. */
    boolean foldable() {
        return foldable;
    }
}
