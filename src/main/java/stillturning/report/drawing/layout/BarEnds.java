package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.DiagramLine;

/** Slides the ends of lines along bars a little, where that takes a kink out of a line. */
final class BarEnds {
    private static final double FARTHEST = SymbolShape.ROW / 2;
    private static final double APART = 6;

    private final List<PlacedDiagram.PlacedSymbol> symbols;
    private final List<PlacedDiagram.PlacedLine> routes;

    private BarEnds(PlacedDiagram placed) {
        symbols = new ArrayList<>(placed.symbols());
        routes = new ArrayList<>(placed.routes());
    }

    static PlacedDiagram slid(PlacedDiagram placed) {
        BarEnds ends = new BarEnds(placed);
        for (int i = 0; i < ends.routes.size(); i++) {
            ends.slide(i);
        }
        return new PlacedDiagram(
                List.copyOf(ends.symbols),
                List.copyOf(ends.routes),
                placed.frames(),
                placed.width(),
                placed.height());
    }

    private void slide(int index) {
        List<Point> p = routes.get(index).points();
        boolean kinked =
                p.size() == 4
                        && p.get(0).y() == p.get(1).y()
                        && p.get(2).y() == p.get(3).y()
                        && Math.abs(p.get(3).y() - p.get(0).y()) <= FARTHEST;
        if (kinked && routes.get(index).joints().isEmpty()) {
            DiagramLine line = routes.get(index).line();
            boolean done = slideEnd(index, line.fromSymbol(), p.get(0), p.get(3));
            if (!done) {
                slideEnd(index, line.toSymbol(), p.get(3), p.get(0));
            }
        }
    }

    private boolean slideEnd(int index, String symbol, Point end, Point fixed) {
        for (int i = 0; i < symbols.size(); i++) {
            PlacedDiagram.PlacedSymbol bar = symbols.get(i);
            boolean own = bar.sized().symbol().id().equals(symbol) && bar.sized().bar();
            Point moved = new Point(end.x(), fixed.y());
            if (own && fits(bar, end, moved) && clear(index, moved, fixed)) {
                symbols.set(i, with(bar, end, moved));
                routes.set(index, straight(routes.get(index), end, moved, fixed));
                return true;
            }
        }
        return false;
    }

    /**
     * Whether the place lies on the bar, and no other line of that side ends there or on the way.
     */
    private static boolean fits(PlacedDiagram.PlacedSymbol bar, Point end, Point moved) {
        double top = bar.box().y() + bar.sized().shape().axis().y() + APART / 2;
        double low = Math.min(end.y(), moved.y()) - APART;
        double high = Math.max(end.y(), moved.y()) + APART;
        boolean free =
                bar.ends().stream()
                        .map(PlacedDiagram.LineEnd::at)
                        .filter(at -> at.x() == end.x() && at.y() != end.y())
                        .noneMatch(at -> at.y() > low && at.y() < high);
        return free && moved.y() >= top && moved.y() <= bar.box().bottom() - BarShape.OVERHANG;
    }

    /** Whether the straightened line keeps clear of texts, symbols and lines along it. */
    private boolean clear(int index, Point moved, Point fixed) {
        double left = Math.min(moved.x(), fixed.x());
        double width = Math.abs(moved.x() - fixed.x());
        Box strip = new Box(left + 0.5, moved.y() - 3, width - 1, 6);
        boolean past = symbols.stream().noneMatch(symbol -> symbol.box().overlaps(strip));
        for (int i = 0; past && i < routes.size(); i++) {
            past = i == index ? routes.get(i).labels().isEmpty() : !along(routes.get(i), strip);
        }
        return past;
    }

    private static boolean along(PlacedDiagram.PlacedLine route, Box strip) {
        boolean hit = route.labels().stream().anyMatch(label -> label.box().overlaps(strip));
        for (int i = 1; i < route.points().size() && !hit; i++) {
            Point a = route.points().get(i - 1);
            Point b = route.points().get(i);
            double left = Math.min(a.x(), b.x());
            hit =
                    a.y() == b.y()
                            && new Box(left, a.y() - 0.5, Math.abs(b.x() - a.x()), 1)
                                    .overlaps(strip);
        }
        return hit;
    }

    private static PlacedDiagram.PlacedSymbol with(
            PlacedDiagram.PlacedSymbol bar, Point end, Point moved) {
        List<PlacedDiagram.LineEnd> ends =
                bar.ends().stream()
                        .map(
                                e ->
                                        e.at().equals(end)
                                                ? new PlacedDiagram.LineEnd(moved, e.side())
                                                : e)
                        .toList();
        return new PlacedDiagram.PlacedSymbol(bar.sized(), bar.box(), ends);
    }

    private static PlacedDiagram.PlacedLine straight(
            PlacedDiagram.PlacedLine route, Point end, Point moved, Point fixed) {
        List<Point> points =
                route.points().get(0).equals(end) ? List.of(moved, fixed) : List.of(fixed, moved);
        return new PlacedDiagram.PlacedLine(
                route.number(), route.line(), points, route.joints(), route.labels());
    }
}
