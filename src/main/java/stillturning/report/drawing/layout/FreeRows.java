package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/**
 * Rows that lead from one bar to one load each, whatever lies in them. They may change places among
 * themselves without a line crossing another that it did not cross before, so they are put in the
 * diagram's order: that is the order in which a person wrote the loads.
 */
final class FreeRows {

    private final PlacedDiagram placed;
    private final Map<String, PlacedDiagram.PlacedSymbol> symbols = new HashMap<>();
    private final Map<String, Integer> inDiagram;
    private final Map<String, List<PlacedDiagram.PlacedLine>> routes = new HashMap<>();

    /** What lies in a row, the load last. */
    private record Row(List<String> symbols) {
        String load() {
            return symbols.get(symbols.size() - 1);
        }
    }

    /**
     * @param inDiagram place in the diagram's order by symbol
     */
    private FreeRows(PlacedDiagram placed, Map<String, Integer> inDiagram) {
        this.placed = placed;
        this.inDiagram = inDiagram;
        placed.symbols().forEach(symbol -> symbols.put(symbol.sized().symbol().id(), symbol));
        for (PlacedDiagram.PlacedLine route : placed.routes()) {
            add(route.line().fromSymbol(), route);
            add(route.line().toSymbol(), route);
        }
    }

    private void add(String symbol, PlacedDiagram.PlacedLine route) {
        routes.computeIfAbsent(symbol, id -> new ArrayList<>()).add(route);
    }

    /** Where everything would lie with such rows in the diagram's order; empty if it does. */
    static Optional<Map<String, Box>> inOrder(
            PlacedDiagram placed, Map<String, Integer> inDiagram) {
        return new FreeRows(placed, inDiagram).moved();
    }

    /** How often lines cross each other. */
    static int crossings(PlacedDiagram placed) {
        List<List<Point>> courses =
                placed.routes().stream().map(PlacedDiagram.PlacedLine::points).toList();
        int crossings = 0;
        for (int i = 0; i < courses.size(); i++) {
            for (int k = i + 1; k < courses.size(); k++) {
                crossings += crossings(courses.get(i), courses.get(k));
            }
        }
        return crossings;
    }

    private static int crossings(List<Point> one, List<Point> other) {
        int crossings = 0;
        for (int i = 1; i < one.size(); i++) {
            Box a = along(one, i);
            for (int k = 1; k < other.size(); k++) {
                Box b = along(other, k);
                boolean across = (a.width() == 0) != (b.width() == 0);
                crossings += across && cross(a, b) && cross(b, a) ? 1 : 0;
            }
        }
        return crossings;
    }

    private static Box along(List<Point> points, int end) {
        Point from = points.get(end - 1);
        Point to = points.get(end);
        return new Box(from.x(), from.y(), 0, 0).joined(new Box(to.x(), to.y(), 0, 0));
    }

    /** Whether one lies between the ends of the other, looked at along one axis. */
    private static boolean cross(Box one, Box other) {
        return one.width() > 0
                ? one.x() < other.x() && other.x() < one.right()
                : one.y() < other.y() && other.y() < one.bottom();
    }

    private Optional<Map<String, Box>> moved() {
        Map<String, Box> boxes = new HashMap<>(placed.boxes());
        boolean any = false;
        for (List<Row> rows : byBar().values()) {
            List<Row> fromTop = sorted(rows, Comparator.comparingDouble(row -> middle(row.load())));
            List<Row> wanted = sorted(rows, Comparator.comparingInt(row -> index(row.load())));
            any |= !fromTop.equals(wanted);
            for (int i = 0; i < rows.size(); i++) {
                double y = middle(fromTop.get(i).load());
                for (String symbol : wanted.get(i).symbols) {
                    boxes.computeIfPresent(
                            symbol, (id, box) -> box.movedBy(0, y - box.height() / 2 - box.y()));
                }
            }
        }
        return any ? Optional.of(boxes) : Optional.empty();
    }

    private static List<Row> sorted(List<Row> rows, Comparator<Row> order) {
        return rows.stream().sorted(order).toList();
    }

    private int index(String symbol) {
        return inDiagram.getOrDefault(symbol, Integer.MAX_VALUE);
    }

    private double middle(String symbol) {
        Box box = placed(symbol).box();
        return box.y() + box.height() / 2;
    }

    private PlacedDiagram.PlacedSymbol placed(String symbol) {
        PlacedDiagram.PlacedSymbol found = symbols.get(symbol);
        if (found == null) {
            throw new IllegalStateException("nothing was laid out for " + symbol);
        }
        return found;
    }

    private Map<String, List<Row>> byBar() {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (PlacedDiagram.PlacedLine route : placed.routes()) {
            String bar = route.line().fromSymbol();
            if (placed(bar).sized().bar()) {
                row(route)
                        .ifPresent(
                                row -> rows.computeIfAbsent(bar, id -> new ArrayList<>()).add(row));
            }
        }
        return rows;
    }

    /** The row that begins with a line, if nothing branches off before its end. */
    private Optional<Row> row(PlacedDiagram.PlacedLine first) {
        List<String> passed = new ArrayList<>();
        PlacedDiagram.PlacedLine on = first;
        while (passed.size() <= symbols.size()) {
            String next = on.line().toSymbol();
            List<PlacedDiagram.PlacedLine> ending = routes.getOrDefault(next, List.of());
            if (placed(next).sized().bar() || ending.size() > 2) {
                return Optional.empty();
            }
            passed.add(next);
            if (ending.size() == 1) {
                return Optional.of(new Row(List.copyOf(passed)));
            }
            PlacedDiagram.PlacedLine other =
                    ending.get(ending.get(0).number() == on.number() ? 1 : 0);
            if (!other.line().fromSymbol().equals(next)) {
                return Optional.empty();
            }
            on = other;
        }
        return Optional.empty();
    }
}
