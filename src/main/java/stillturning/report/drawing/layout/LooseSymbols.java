package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/**
 * Lays symbols to which nothing is joined yet where somebody wants them, or as near to it as there
 * is room: what has no line has no place of its own in the layers.
 */
final class LooseSymbols {

    /** Room around a symbol, and how far from one try to the next (drawing units). */
    private static final double APART = 8;

    /** Directions in which room is looked for at one distance. */
    private static final int WAYS = 16;

    private final List<PlacedDiagram.PlacedSymbol> symbols;
    private final List<Box> taken = new ArrayList<>();

    private LooseSymbols(PlacedDiagram placed) {
        symbols = new ArrayList<>(placed.symbols());
        symbols.forEach(symbol -> taken.add(symbol.box()));
        placed.frames().forEach(frame -> taken.add(frame.box()));
        placed.routes().forEach(this::take);
    }

    /** A symbol, and where its middle is wanted in the layout. */
    record Wanted(SizedSymbol symbol, Point middle) {}

    /** The diagram with these besides; it grows where there is no room within. */
    static PlacedDiagram placed(PlacedDiagram others, List<Wanted> wanted) {
        if (wanted.isEmpty()) {
            return others;
        }
        LooseSymbols all = new LooseSymbols(others);
        double width = others.width();
        double height = others.height();
        for (Wanted one : wanted) {
            Box box = all.place(one);
            width = Math.max(width, box.right());
            height = Math.max(height, box.bottom());
        }
        return new PlacedDiagram(
                List.copyOf(all.symbols), others.routes(), others.frames(), width, height);
    }

    private void take(PlacedDiagram.PlacedLine route) {
        List<Point> points = route.points();
        for (int i = 1; i < points.size(); i++) {
            taken.add(at(points.get(i - 1)).joined(at(points.get(i))));
        }
        route.labels().forEach(label -> taken.add(label.box()));
    }

    private static Box at(Point point) {
        return new Box(point.x(), point.y(), 0, 0);
    }

    private Box place(Wanted wanted) {
        SizedSymbol symbol = wanted.symbol;
        double left = wanted.middle.x() - symbol.width() / 2;
        double top = wanted.middle.y() - symbol.height() / 2;
        Box box = within(new Box(left, top, symbol.width(), symbol.height()));
        for (int ring = 1; !free(box); ring++) {
            box = nearest(new Box(left, top, symbol.width(), symbol.height()), ring * APART);
        }
        taken.add(box);
        symbols.add(new PlacedDiagram.PlacedSymbol(symbol, box, List.of()));
        return box;
    }

    /** A free place at a distance, or one that is not. */
    private Box nearest(Box around, double distance) {
        Box found = within(around.movedBy(distance, 0));
        for (int way = 1; way < WAYS && !free(found); way++) {
            double turn = 2 * Math.PI * way / WAYS;
            found = within(around.movedBy(distance * Math.cos(turn), distance * Math.sin(turn)));
        }
        return found;
    }

    private static Box within(Box box) {
        return box.movedBy(Math.max(0, -box.x()), Math.max(0, -box.y()));
    }

    private boolean free(Box box) {
        Box room =
                new Box(
                        box.x() - APART,
                        box.y() - APART,
                        box.width() + 2 * APART,
                        box.height() + 2 * APART);
        return taken.stream().noneMatch(room::overlaps);
    }
}
