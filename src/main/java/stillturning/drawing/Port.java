package stillturning.drawing;

/**
 * A place on a symbol's edge where lines end.
 *
 * @param name unique within the symbol
 * @param label text inside the symbol beside the port, drawn by boxes only; may be empty
 */
public record Port(String name, Side side, String label) {
    public Port(String name, Side side) {
        this(name, side, "");
    }
}
