package stillturning.report.drawing.diagram;

import stillturning.report.drawing.MarkState;

/**
 * A wire between two ports, drawn from left to right where the diagram allows it.
 *
 * @param label gauge, length or the like; may be empty
 */
public record DiagramLine(
        String fromSymbol,
        String fromPort,
        String toSymbol,
        String toPort,
        String label,
        MarkState look) {
    /** A wire that tells no state. */
    public DiagramLine(
            String fromSymbol, String fromPort, String toSymbol, String toPort, String label) {
        this(fromSymbol, fromPort, toSymbol, toPort, label, MarkState.PLAIN);
    }

    /** The same wire in another state. */
    public DiagramLine looking(MarkState other) {
        return new DiagramLine(fromSymbol, fromPort, toSymbol, toPort, label, other);
    }
}
