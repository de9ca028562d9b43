package stillturning.report.drawing.layout;

import java.util.List;
import java.util.Optional;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Side;

/**
 * Where a symbol lies on the picture.
 *
 * @param box around its strokes and texts, without ground stubs
 */
public record SymbolPosition(String symbol, Box box, List<LineLanding> ports) {
    public SymbolPosition {
        ports = List.copyOf(ports);
    }

    /**
     * Where lines can end on a symbol.
     *
     * @param at where a line to it ends; on a bar, which takes lines everywhere, its middle
     * @param room what belongs to this port and no other, to be pointed at
     */
    public record LineLanding(String port, Point at, Side side, Box room) {}

    /** The port at a place, or none. */
    public Optional<LineLanding> portAt(Point at) {
        return ports.stream().filter(port -> port.room().holds(at)).findFirst();
    }
}
