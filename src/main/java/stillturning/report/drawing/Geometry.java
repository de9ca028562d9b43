package stillturning.report.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the things of a placed diagram lie on its picture. */
final class Geometry {
    static final double MARGIN = 12;

    private final Placed placed;
    private final Map<String, Placed.PlacedSymbol> bars = new HashMap<>();

    /** Distance of the layout's upper edge from that of the picture. */
    private final double top;

    Geometry(Diagram diagram, Placed placed) {
        this.placed = placed;
        placed.symbols().stream()
                .filter(symbol -> symbol.sized().bar())
                .forEach(symbol -> bars.put(symbol.sized().symbol().id(), symbol));
        top = MARGIN + (diagram.title().isBlank() ? 0 : DiagramPainter.TITLE_SIZE + 12);
    }

    At moved(At at) {
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
    List<At> course(Placed.Route route) {
        List<At> points = new ArrayList<>();
        At start = route.points().get(0);
        At end = route.points().get(route.points().size() - 1);
        points.addAll(onBar(route.line().fromSymbol(), start));
        points.addAll(route.points());
        List<At> beyond = new ArrayList<>(onBar(route.line().toSymbol(), end));
        Collections.reverse(beyond);
        points.addAll(beyond);
        return points.stream().map(this::moved).toList();
    }

    /** From the axis of a bar to a line's end on its room; nothing for another symbol. */
    private List<At> onBar(String id, At end) {
        Placed.PlacedSymbol bar = bars.get(id);
        if (bar == null) {
            return List.of();
        }
        double axisX = bar.box().x() + bar.sized().shape().axis().x();
        boolean aside = end.x() == bar.box().x() || end.x() == bar.box().right();
        double y = aside ? end.y() : Math.max(topOfBar(bar), Math.min(bottomOfBar(bar), end.y()));
        return List.of(new At(axisX, y), new At(end.x(), y));
    }

    static double topOfBar(Placed.PlacedSymbol bar) {
        return bar.box().y() + bar.sized().shape().axis().y();
    }

    /** A little below the last line, wherever the layout ended the room. */
    static double bottomOfBar(Placed.PlacedSymbol bar) {
        return bar.ends().stream()
                        .filter(end -> end.side().horizontal())
                        .mapToDouble(end -> end.at().y())
                        .max()
                        .orElse(topOfBar(bar) + BarShape.OVERHANG)
                + BarShape.OVERHANG;
    }
}
