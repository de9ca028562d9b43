package stillturning.report.drawing;

/** A rectangle with its sides along the axes (drawing units). */
public record Box(double x, double y, double width, double height) {
    /** Its right edge. */
    public double right() {
        return x + width;
    }

    /** Its lower edge. */
    public double bottom() {
        return y + height;
    }

    /** Whether a point lies in it or on its edge. */
    public boolean holds(Point at) {
        return at.x() >= x && at.x() <= right() && at.y() >= y && at.y() <= bottom();
    }

    /** The smallest box that holds both. */
    public Box joined(Box other) {
        double left = Math.min(x, other.x);
        double top = Math.min(y, other.y);
        return new Box(
                left,
                top,
                Math.max(right(), other.right()) - left,
                Math.max(bottom(), other.bottom()) - top);
    }

    public Box movedBy(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }

    /** Whether the insides of two boxes have a point in common. */
    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
