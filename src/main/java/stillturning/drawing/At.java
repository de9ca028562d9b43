package stillturning.drawing;

/** A point (drawing units; y grows downwards). */
public record At(double x, double y) {
    At movedBy(double dx, double dy) {
        return new At(x + dx, y + dy);
    }
}
