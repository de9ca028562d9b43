package stillturning.report.drawing;

import java.util.List;

/** A symbol with the room it takes, its ground stubs included. */
record Sized(Symbol symbol, Shape shape, List<Stub> stubs) {

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
        return symbol.glyph().form == Glyph.Form.BAR || symbol.glyph().form == Glyph.Form.GROUND;
    }

    At portOnShape(Stub stub) {
        return shape.ports().getOrDefault(stub.ownerPort().name(), shape.axis());
    }

    private double reach(Side side) {
        return stubs.stream()
                .filter(stub -> stub.ownerPort().side() == side)
                .mapToDouble(Stub::reach)
                .max()
                .orElse(0);
    }
}
