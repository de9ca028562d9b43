package stillturning.report.drawing.layout;

import java.util.List;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Polyline;
import stillturning.report.drawing.diagram.DiagramLine;

/**
 * Where a line runs on the picture.
 *
 * @param number of the line in the diagram, counted from 0
 * @param points corners from the first end to the other
 */
public record Route(int number, DiagramLine line, List<Point> points) {
    public Route {
        points = List.copyOf(points);
    }

    /** Distance of a place from the line. */
    public double distanceFrom(Point at) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.size(); i++) {
            nearest = Math.min(nearest, Polyline.distance(at, points.get(i - 1), points.get(i)));
        }
        return nearest;
    }
}
