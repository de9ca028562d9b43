package stillturning.drawing;

/** A rectangle with its sides along the axes (drawing units). */
record Box(double x, double y, double width, double height) {
    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    Box movedBy(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }

    /** Whether the insides of two boxes have a point in common. */
    boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
