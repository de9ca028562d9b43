package stillturning.report.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/** Bends that the eye can see. */
public final class Polyline {
    private Polyline() {}

    /**
     * The points without those that lie within a tolerance of the line through their neighbours
     * kept.
     *
     * @see "D. Douglas, T. Peucker, The Canadian Cartographer 10(2) (1973) 112-122 (from memory,
     *     unverified)"
     */
    public static List<Point> simplified(List<Point> points, double tolerance) {
        if (points.size() < 3) {
            return points;
        }
        BitSet kept = new BitSet(points.size());
        kept.set(0);
        kept.set(points.size() - 1);
        Deque<int[]> stretches = new ArrayDeque<>();
        stretches.push(new int[] {0, points.size() - 1});
        while (!stretches.isEmpty()) {
            int[] stretch = stretches.pop();
            int farthest = farthest(points, stretch[0], stretch[1], tolerance);
            if (farthest > 0) {
                kept.set(farthest);
                stretches.push(new int[] {stretch[0], farthest});
                stretches.push(new int[] {farthest, stretch[1]});
            }
        }
        List<Point> rest = new ArrayList<>();
        kept.stream().forEach(i -> rest.add(points.get(i)));
        return rest;
    }

    /** The point farthest from the straight line, or 0 where all are within the tolerance. */
    private static int farthest(List<Point> points, int first, int last, double tolerance) {
        int farthest = 0;
        double worst = tolerance;
        for (int i = first + 1; i < last; i++) {
            double distance = distance(points.get(i), points.get(first), points.get(last));
            if (distance > worst) {
                worst = distance;
                farthest = i;
            }
        }
        return farthest;
    }

    /** Distance of a point from a stretch. */
    public static double distance(Point point, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        double along = (point.x() - from.x()) * dx + (point.y() - from.y()) * dy;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, along / square));
        return Math.hypot(point.x() - from.x() - share * dx, point.y() - from.y() - share * dy);
    }
}
