package stillturning.drawing;

/** One-line diagrams: sources on the left, loads on the right, every symbol and line once. */
public final class OneLine {
    private OneLine() {}

    /**
     * Lays out and draws a diagram. The places depend on symbols, lines and texts, not on looks.
     *
     * @see "IEC 60617 for the manner of the symbols (from memory, unverified)"
     */
    public static Picture of(Diagram diagram) {
        return new DiagramPainter(diagram, LayeredLayout.of(diagram)).picture();
    }
}
