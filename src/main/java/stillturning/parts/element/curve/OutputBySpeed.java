package stillturning.parts.element.curve;

import java.util.List;

/**
 * Largest current of an alternator by its speed: straight lines between points, nothing below the
 * first, level above the last.
 */
public record OutputBySpeed(List<OutputPoint> points) {

    /** Speed (revolutions per second) and current (A). */
    public record OutputPoint(double revsPerSecond, double amps) {
        public OutputPoint {
            Require.notNegative("alternator", "speed (1/s)", revsPerSecond);
            Require.notNegative("alternator", "current (A)", amps);
        }
    }

    public OutputBySpeed {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("alternator: output by speed has no point");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).revsPerSecond <= points.get(i - 1).revsPerSecond) {
                throw new IllegalArgumentException("alternator: speeds do not rise");
            }
        }
    }

    /** Current (A) at a speed (revolutions per second). */
    public double ampsAt(double revsPerSecond) {
        if (revsPerSecond < points.get(0).revsPerSecond) {
            return 0;
        }
        for (int i = 1; i < points.size(); i++) {
            OutputPoint low = points.get(i - 1);
            OutputPoint high = points.get(i);
            if (revsPerSecond < high.revsPerSecond) {
                double share =
                        (revsPerSecond - low.revsPerSecond)
                                / (high.revsPerSecond - low.revsPerSecond);
                return low.amps + share * (high.amps - low.amps);
            }
        }
        return points.get(points.size() - 1).amps;
    }

    /** The same machine with every current multiplied. */
    public OutputBySpeed scaled(double factor) {
        return new OutputBySpeed(
                points.stream()
                        .map(p -> new OutputPoint(p.revsPerSecond, p.amps * factor))
                        .toList());
    }

    /** Largest current at any speed (A). */
    public double largestAmps() {
        return points.stream().mapToDouble(OutputPoint::amps).max().orElse(0);
    }
}
