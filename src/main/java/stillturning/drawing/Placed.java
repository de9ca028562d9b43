package stillturning.drawing;

import java.util.List;

/** A diagram with a place for everything, still without strokes. */
record Placed(
        List<PlacedSymbol> symbols,
        List<Route> routes,
        List<Frame> frames,
        double width,
        double height) {

    /**
     * A symbol where it lies.
     *
     * @param ends where lines end on it, for a bar
     */
    record PlacedSymbol(Sized sized, Box box, List<End> ends) {
        /** Upper left corner of the shape. */
        At corner() {
            return new At(box.x() + sized.left(), box.y() + sized.top());
        }
    }

    record End(At at, Side side) {}

    /**
     * A line where it runs.
     *
     * @param joints where it meets others of the same net
     * @param labels its text, if it has one
     */
    record Route(
            int number, Line line, List<At> points, List<At> joints, List<Shape.Caption> labels) {}

    /** The frame around a group. */
    record Frame(String name, Box box) {}
}
