package stillturning.report.drawing.diagram;

/**
 * A place on a symbol's edge where lines end.
 *
 * @param name unique within the symbol
 * @param label text inside the symbol beside the port, drawn by boxes only; may be empty
 * @param loose whether it has a place and a ring of its own although no line ends there
 */
public record Port(String name, Side side, String label, boolean loose) {
    public Port(String name, Side side, String label) {
        this(name, side, label, false);
    }

    public Port(String name, Side side) {
        this(name, side, "");
    }

    /** The same port, waiting for a line. */
    public Port waiting() {
        return new Port(name, side, label, true);
    }
}
