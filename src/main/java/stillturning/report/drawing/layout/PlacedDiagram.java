package stillturning.report.drawing.layout;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Side;

/** A diagram with a place for everything, still without strokes. */
record PlacedDiagram(
        List<PlacedSymbol> symbols,
        List<PlacedLine> routes,
        List<GroupFrame> frames,
        double width,
        double height) {

    /** Where symbols lie, by id. */
    Map<String, Box> boxes() {
        return symbols.stream()
                .collect(Collectors.toMap(s -> s.sized().symbol().id(), PlacedSymbol::box));
    }

    /** The same places for symbols and lines in another state. */
    PlacedDiagram showing(Diagram shown) {
        Map<String, DiagramSymbol> byId =
                shown.symbols().stream().collect(Collectors.toMap(DiagramSymbol::id, s -> s));
        return new PlacedDiagram(
                symbols.stream().map(symbol -> symbol.showing(byId)).toList(),
                routes.stream().map(r -> r.showing(shown.lines().get(r.number()))).toList(),
                frames,
                width,
                height);
    }

    /**
     * A symbol where it lies.
     *
     * @param ends where lines end on it, for a bar
     */
    record PlacedSymbol(SizedSymbol sized, Box box, List<LineEnd> ends) {
        /** Upper left corner of the shape. */
        Point corner() {
            return new Point(box.x() + sized.left(), box.y() + sized.top());
        }

        private PlacedSymbol showing(Map<String, DiagramSymbol> byId) {
            List<GroundStub> stubs =
                    sized.stubs().stream()
                            .map(stub -> stub.showing(of(byId, stub.ground().id())))
                            .toList();
            DiagramSymbol symbol = of(byId, sized.symbol().id());
            return new PlacedSymbol(new SizedSymbol(symbol, sized.shape(), stubs), box, ends);
        }

        private static DiagramSymbol of(Map<String, DiagramSymbol> byId, String id) {
            DiagramSymbol symbol = byId.get(id);
            if (symbol == null) {
                throw new IllegalArgumentException("the diagram shown has no symbol " + id);
            }
            return symbol;
        }
    }

    record LineEnd(Point at, Side side) {}

    /**
     * A line where it runs.
     *
     * @param joints where it meets others of the same net
     * @param labels its text, if it has one
     */
    record PlacedLine(
            int number,
            DiagramLine line,
            List<Point> points,
            List<Point> joints,
            List<SymbolShape.Caption> labels) {
        private PlacedLine showing(DiagramLine other) {
            return new PlacedLine(number, other, points, joints, labels);
        }
    }

    /** The frame around a group. */
    record GroupFrame(String name, Box box) {}
}
