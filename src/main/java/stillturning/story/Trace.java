package stillturning.story;

import java.util.List;

/**
 * A quantity over time; between points it is to be drawn straight.
 *
 * @param name part or terminal
 * @param unit {@code V} or {@code %}
 * @param told the range of what it was at the instants of events, those between that last no time
 *     included
 */
public record Trace(String name, String unit, List<TracePoint> points, Extremes told) {

    /** Lowest and highest of something; nothing yet where the lowest is above the highest. */
    public record Extremes(double lowest, double highest) {
        public static final Extremes NOTHING =
                new Extremes(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

        /** The same with one value more. */
        public Extremes with(double value) {
            return value >= lowest && value <= highest
                    ? this
                    : new Extremes(Math.min(lowest, value), Math.max(highest, value));
        }
    }

    /** Time (s) and value. */
    public record TracePoint(double seconds, double value) {}

    public Trace {
        points = List.copyOf(points);
    }

    /** Lowest value, at any instant that the story tells of. */
    public double lowest() {
        return Math.min(
                told.lowest,
                points.stream().mapToDouble(TracePoint::value).min().orElse(Double.NaN));
    }

    /** Highest value, at any instant that the story tells of. */
    public double highest() {
        return Math.max(
                told.highest,
                points.stream().mapToDouble(TracePoint::value).max().orElse(Double.NaN));
    }

    /** Value at the first point. */
    public double first() {
        return points.isEmpty() ? Double.NaN : points.get(0).value();
    }
}
