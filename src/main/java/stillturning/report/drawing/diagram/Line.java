package stillturning.report.drawing.diagram;

import stillturning.report.drawing.MarkState;

/**
 * A wire between two ports, drawn from left to right where the diagram allows it.
 *
 * @param label gauge, length or the like; may be empty
 */
public record Line(
        String fromSymbol,
        String fromPort,
        String toSymbol,
        String toPort,
        String label,
        MarkState look) {
    /** A wire that tells no state. */
    public Line(String fromSymbol, String fromPort, String toSymbol, String toPort, String label) {
        this(fromSymbol, fromPort, toSymbol, toPort, label, MarkState.PLAIN);
    }

    /** The same wire in another state. */
    public Line looking(MarkState other) {
        return new Line(fromSymbol, fromPort, toSymbol, toPort, label, other);
    }
}
