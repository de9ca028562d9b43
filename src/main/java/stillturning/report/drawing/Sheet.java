package stillturning.report.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A diagram that has been laid out: its picture in any state, and where everything lies on it. */
public final class Sheet {
    private final Diagram diagram;
    private final Placed placed;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final List<Course> courses;

    Sheet(Diagram diagram, Placed placed) {
        this.diagram = diagram;
        this.placed = placed;
        Geometry geometry = new Geometry(diagram, placed);
        Spots found = new Spots(geometry);
        found.of(placed).forEach(spot -> spots.put(spot.symbol(), spot));
        List<Course> all = new ArrayList<>();
        for (Placed.Route route : placed.routes()) {
            all.add(new Course(route.number(), route.line(), geometry.course(route)));
        }
        for (Placed.PlacedSymbol owner : placed.symbols()) {
            for (Stub stub : owner.sized().stubs()) {
                all.add(hanging(stub, found.stubCourse(owner, stub)));
            }
        }
        all.sort(Comparator.comparingInt(Course::number));
        courses = List.copyOf(all);
    }

    /** The course of a line to a ground, which may also be drawn from the ground. */
    private Course hanging(Stub stub, List<At> fromOwner) {
        Line line = diagram.lines().get(stub.line());
        List<At> points = new ArrayList<>(fromOwner);
        if (line.fromSymbol().equals(stub.ground().id())) {
            Collections.reverse(points);
        }
        return new Course(stub.line(), line, points);
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
    public Map<String, Spot> spots() {
        return Collections.unmodifiableMap(spots);
    }

    /** Where each line runs, in the diagram's order. */
    public List<Course> courses() {
        return courses;
    }

    Placed placed() {
        return placed;
    }
}
