package stillturning.report.drawing.layout;

import java.util.List;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Side;

/** A symbol with the room it takes, its ground stubs included. */
record SizedSymbol(DiagramSymbol symbol, SymbolShape shape, List<GroundStub> stubs) {

    /** Distance from the left edge of the whole to that of the shape. */
    double left() {
        return reach(Side.WEST);
    }

    double top() {
        return reach(Side.NORTH);
    }

    double width() {
        double toTheRight =
                stubs.stream()
                        .filter(stub -> !stub.ownerPort().side().horizontal())
                        .mapToDouble(stub -> portOnShape(stub).x() + stub.rightOfPort())
                        .max()
                        .orElse(0);
        return left() + Math.max(shape.width() + reach(Side.EAST), toTheRight);
    }

    double height() {
        return top() + shape.height() + reach(Side.SOUTH);
    }

    boolean bar() {
        return symbol.glyph().form == Glyph.GlyphForm.BAR
                || symbol.glyph().form == Glyph.GlyphForm.GROUND;
    }

    Point portOnShape(GroundStub stub) {
        return shape.ports().getOrDefault(stub.ownerPort().name(), shape.axis());
    }

    private double reach(Side side) {
        return stubs.stream()
                .filter(stub -> stub.ownerPort().side() == side)
                .mapToDouble(GroundStub::reach)
                .max()
                .orElse(0);
    }
}
