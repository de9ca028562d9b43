package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;

/** Where the things of a placed diagram lie on its picture. */
final class Geometry {
    static final double MARGIN = 12;

    private final PlacedDiagram placed;
    private final Map<String, PlacedDiagram.PlacedSymbol> bars = new HashMap<>();

    /** Distance of the layout's upper edge from that of the picture. */
    private final double top;

    Geometry(Diagram diagram, PlacedDiagram placed) {
        this.placed = placed;
        placed.symbols().stream()
                .filter(symbol -> symbol.sized().bar())
                .forEach(symbol -> bars.put(symbol.sized().symbol().id(), symbol));
        top = top(diagram);
    }

    private static double top(Diagram diagram) {
        return MARGIN + (diagram.title().isBlank() ? 0 : Mark.Type.TITLE_SIZE + 12);
    }

    /** The place in the layout of a place on the picture. */
    static Point inLayout(Diagram diagram, Point onPicture) {
        return onPicture.movedBy(-MARGIN, -top(diagram));
    }

    Point moved(Point at) {
        return at.movedBy(MARGIN, top);
    }

    Box moved(Box box) {
        return box.movedBy(MARGIN, top);
    }

    /** Lower edge of what was laid out. */
    double bottom() {
        return top + placed.height() + MARGIN;
    }

    /** The points of a route, prolonged to the axis of a bar that it ends on. */
    List<Point> course(PlacedDiagram.PlacedLine route) {
        List<Point> points = new ArrayList<>();
        Point start = route.points().get(0);
        Point end = route.points().get(route.points().size() - 1);
        points.addAll(onBar(route.line().fromSymbol(), start));
        points.addAll(route.points());
        List<Point> beyond = new ArrayList<>(onBar(route.line().toSymbol(), end));
        Collections.reverse(beyond);
        points.addAll(beyond);
        return points.stream().map(this::moved).toList();
    }

    /** From the axis of a bar to a line's end on its room; nothing for another symbol. */
    private List<Point> onBar(String id, Point end) {
        PlacedDiagram.PlacedSymbol bar = bars.get(id);
        if (bar == null) {
            return List.of();
        }
        double axisX = bar.box().x() + bar.sized().shape().axis().x();
        boolean aside = end.x() == bar.box().x() || end.x() == bar.box().right();
        double y = aside ? end.y() : Math.max(topOfBar(bar), Math.min(bottomOfBar(bar), end.y()));
        return List.of(new Point(axisX, y), new Point(end.x(), y));
    }

    static double topOfBar(PlacedDiagram.PlacedSymbol bar) {
        return bar.box().y() + bar.sized().shape().axis().y();
    }

    /** A little below the last line, wherever the layout ended the room. */
    static double bottomOfBar(PlacedDiagram.PlacedSymbol bar) {
        return bar.ends().stream()
                        .filter(end -> end.side().horizontal())
                        .mapToDouble(end -> end.at().y())
                        .max()
                        .orElse(topOfBar(bar) + BarShape.OVERHANG)
                + BarShape.OVERHANG;
    }
}
