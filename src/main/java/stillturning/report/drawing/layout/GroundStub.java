package stillturning.report.drawing.layout;

import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/**
 * A ground that hangs on another symbol's port by a short stub.
 *
 * @param ground the ground symbol
 * @param line number of the line between the two
 * @param ownerPort the port that it hangs on
 */
record GroundStub(DiagramSymbol ground, int line, Port ownerPort, String words) {
    private static final double LENGTH = 15;
    private static final double HALF_BREADTH = 8;

    GroundStub showing(DiagramSymbol other) {
        return new GroundStub(other, line, ownerPort, words);
    }

    /** Room beyond the owner's edge. */
    double reach() {
        boolean textBeyond = ownerPort.side().horizontal() && !words.isEmpty();
        return LENGTH + (textBeyond ? 3 + SymbolShape.widthOf(words, false) : 2);
    }

    /** Room beside the port, towards the right, where the text stands beside the sign. */
    double rightOfPort() {
        boolean textBeside = !ownerPort.side().horizontal() && !words.isEmpty();
        return HALF_BREADTH + (textBeside ? 3 + SymbolShape.widthOf(words, false) : 0);
    }

    SymbolShape.Caption caption(Point port) {
        Side side = ownerPort.side();
        if (!side.horizontal()) {
            double y = port.y() + side.dy * 10 + 3.6;
            return new SymbolShape.Caption(
                    words, port.x() + HALF_BREADTH + 2, y, Mark.Anchor.START, false);
        }
        return new SymbolShape.Caption(
                words,
                port.x() + side.dx * (LENGTH + 2),
                port.y() + 3.6,
                side == Side.EAST ? Mark.Anchor.START : Mark.Anchor.END,
                false);
    }
}
