package stillturning.report.drawing;

/** A point (drawing units; y grows downwards). */
public record Point(double x, double y) {
    /** The point so far away. */
    public Point movedBy(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
