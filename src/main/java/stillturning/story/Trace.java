package stillturning.story;

import java.util.List;

/**
 * A quantity over time; between points it is to be drawn straight.
 *
 * @param name part or terminal
 * @param unit {@code V} or {@code %}
 */
public record Trace(String name, String unit, List<Point> points) {

    /** Time (s) and value. */
    public record Point(double seconds, double value) {}

    public Trace {
        points = List.copyOf(points);
    }

    /** Lowest value. */
    public double lowest() {
        return points.stream().mapToDouble(Point::value).min().orElse(Double.NaN);
    }

    /** Highest value. */
    public double highest() {
        return points.stream().mapToDouble(Point::value).max().orElse(Double.NaN);
    }

    /** Value at the first point. */
    public double first() {
        return points.isEmpty() ? Double.NaN : points.get(0).value();
    }
}
