package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Finds the spots of symbols, grounds on stubs included, and the places of all their ports. */
final class SymbolPositions {
    private static final double REACH = 6;
    private static final double APART = 12;
    private static final double SIGN = 16;

    private final Geometry geometry;

    SymbolPositions(Geometry geometry) {
        this.geometry = geometry;
    }

    List<SymbolPosition> of(PlacedDiagram placed) {
        List<SymbolPosition> spots = new ArrayList<>();
        for (PlacedDiagram.PlacedSymbol symbol : placed.symbols()) {
            spots.add(symbol.sized().bar() ? bar(symbol) : symbol(symbol));
            symbol.sized().stubs().forEach(stub -> spots.add(ground(symbol, stub)));
        }
        return List.copyOf(spots);
    }

    /** The two points of the wire to a ground that hangs on a symbol. */
    List<Point> stubCourse(PlacedDiagram.PlacedSymbol owner, GroundStub stub) {
        Point port = portOf(owner, stub);
        Side side = stub.ownerPort().side();
        return List.of(port, port.movedBy(side.dx * 8, side.dy * 8));
    }

    private Point portOf(PlacedDiagram.PlacedSymbol owner, GroundStub stub) {
        Point corner = owner.corner();
        return geometry.moved(owner.sized().portOnShape(stub).movedBy(corner.x(), corner.y()));
    }

    private SymbolPosition symbol(PlacedDiagram.PlacedSymbol symbol) {
        SymbolShape shape = symbol.sized().shape();
        Point corner = geometry.moved(symbol.corner());
        Set<Point> taken = new HashSet<>(shape.ports().values());
        List<SymbolPosition.LineLanding> ports = new ArrayList<>();
        for (Port port : symbol.sized().symbol().ports()) {
            Point known = shape.ports().get(port.name());
            Point at = known == null ? free(shape, port.side(), taken) : known;
            taken.add(at);
            Point there = at.movedBy(corner.x(), corner.y());
            ports.add(
                    new SymbolPosition.LineLanding(port.name(), there, port.side(), around(there)));
        }
        return new SymbolPosition(
                symbol.sized().symbol().id(),
                new Box(corner.x(), corner.y(), shape.width(), shape.height()),
                ports);
    }

    /** Where a port without lines may be shown: on its side, beside those that are there. */
    private static Point free(SymbolShape shape, Side side, Set<Point> taken) {
        double x = side.dx < 0 ? 0 : side.dx > 0 ? shape.width() : shape.axis().x();
        double y = side.dy < 0 ? 0 : side.dy > 0 ? shape.height() : shape.axis().y();
        Point at = new Point(x, y);
        while (taken.contains(at)) {
            at = side.horizontal() ? at.movedBy(0, APART) : at.movedBy(APART, 0);
        }
        return at;
    }

    private static Box around(Point at) {
        return new Box(at.x() - REACH, at.y() - REACH, 2 * REACH, 2 * REACH);
    }

    private SymbolPosition bar(PlacedDiagram.PlacedSymbol symbol) {
        SymbolShape shape = symbol.sized().shape();
        double from = Geometry.topOfBar(symbol);
        double to = Geometry.bottomOfBar(symbol);
        Point middle =
                geometry.moved(new Point(symbol.box().x() + shape.axis().x(), (from + to) / 2));
        Box strokes = new Box(middle.x(), middle.y() - (to - from) / 2, 0, to - from);
        Map<Side, Box> rooms =
                Map.of(
                        Side.WEST,
                        new Box(middle.x() - REACH, strokes.y(), REACH, strokes.height()),
                        Side.EAST,
                        new Box(middle.x(), strokes.y(), REACH, strokes.height()),
                        Side.NORTH,
                        around(new Point(middle.x(), strokes.y())),
                        Side.SOUTH,
                        around(new Point(middle.x(), strokes.bottom())));
        List<SymbolPosition.LineLanding> ports =
                symbol.sized().symbol().ports().stream()
                        .map(p -> landing(p, middle, rooms.getOrDefault(p.side(), strokes)))
                        .toList();
        Point corner = geometry.moved(symbol.corner());
        double height = strokes.bottom() - corner.y() + BarShape.bottom(symbol.sized().symbol());
        return new SymbolPosition(
                symbol.sized().symbol().id(),
                new Box(corner.x(), corner.y(), shape.width(), height),
                ports);
    }

    private static SymbolPosition.LineLanding landing(Port port, Point middle, Box room) {
        double x = port.side().horizontal() ? middle.x() : room.x() + room.width() / 2;
        double y = port.side().horizontal() ? middle.y() : room.y() + room.height() / 2;
        return new SymbolPosition.LineLanding(port.name(), new Point(x, y), port.side(), room);
    }

    private SymbolPosition ground(PlacedDiagram.PlacedSymbol owner, GroundStub stub) {
        Point port = portOf(owner, stub);
        Point foot = stubCourse(owner, stub).get(1);
        Side side = stub.ownerPort().side();
        double x = side.dx > 0 ? foot.x() : foot.x() - (side.dx < 0 ? SIGN - 8 : SIGN / 2);
        double y = side.dy > 0 ? foot.y() : foot.y() - (side.dy < 0 ? SIGN - 8 : SIGN / 2);
        Box sign =
                side.horizontal() ? new Box(x, y, SIGN - 8, SIGN) : new Box(x, y, SIGN, SIGN - 8);
        Box box = sign;
        if (!stub.words().isEmpty()) {
            box = stub.caption(port).box().joined(sign);
        }
        List<SymbolPosition.LineLanding> ports =
                stub.ground().ports().stream()
                        .map(p -> new SymbolPosition.LineLanding(p.name(), foot, p.side(), sign))
                        .toList();
        return new SymbolPosition(stub.ground().id(), box, ports);
    }
}
