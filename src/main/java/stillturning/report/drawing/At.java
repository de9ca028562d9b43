package stillturning.report.drawing;

/** A point (drawing units; y grows downwards). */
public record At(double x, double y) {
    /** The point so far away. */
    public At movedBy(double dx, double dy) {
        return new At(x + dx, y + dy);
    }
}
