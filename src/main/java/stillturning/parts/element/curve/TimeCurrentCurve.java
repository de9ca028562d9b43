package stillturning.parts.element.curve;

import java.util.List;

/**
 * Published opening times of a protector: for multiples of its rating, the shortest and the longest
 * time. Between points the curve is straight on log-log paper; above the last point the energy let
 * through (current squared times time) stays that of the last point; at or below the first multiple
 * it never opens. Times are those of a cold protector where the curve was published.
 *
 * @param words what a person calls what opens by it
 * @param derating what a warm place takes from the rating
 */
public record TimeCurrentCurve(
        String words, String source, List<CurvePoint> points, Derating derating, Memory memory) {

    /** What a protector keeps of the current before. */
    public enum Memory {
        /** Metal: warm from any current, in balance with a steady one. */
        METAL,
        /** A counter: counts up above what is carried continuously, and down at or below it. */
        COUNTER
    }

    /**
     * The slowest carries continuously what is less than the first published longest time's
     * current.
     */
    private static final double JUST_BELOW = 1 - 1e-6;

    /**
     * @param multiple current as a multiple of the rating, above 0
     * @param fastSeconds shortest time to open (s)
     * @param slowSeconds longest time to open (s); infinite where none is published
     */
    public record CurvePoint(double multiple, double fastSeconds, double slowSeconds) {
        public CurvePoint {
            Require.positive("curve", "multiple of the rating", multiple);
            Require.positive("curve", "shortest time (s)", fastSeconds);
            if (!(slowSeconds >= fastSeconds)) {
                throw new IllegalArgumentException(
                        "curve at "
                                + multiple
                                + " x rating: longest time "
                                + slowSeconds
                                + " s is below the shortest "
                                + fastSeconds
                                + " s");
            }
        }

        private double logSeconds(Tripping edge) {
            return switch (edge) {
                case FAST -> Math.log(fastSeconds);
                case SLOW -> Math.log(slowSeconds);
                // where no longest time is published the shortest is all that is known
                case TYPICAL ->
                        Double.isInfinite(slowSeconds)
                                ? Math.log(fastSeconds)
                                : 0.5 * (Math.log(fastSeconds) + Math.log(slowSeconds));
            };
        }
    }

    public TimeCurrentCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("curve " + source + ": needs at least two points");
        }
        if (Double.isInfinite(points.get(points.size() - 1).slowSeconds)) {
            throw new IllegalArgumentException(
                    "curve " + source + ": no longest time at the highest current");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).multiple <= points.get(i - 1).multiple) {
                throw new IllegalArgumentException(
                        "curve " + source + ": multiples of the rating do not rise");
            }
        }
    }

    /** Largest multiple of the rating that every one of them carries continuously. */
    public double holdMultiple() {
        return points.get(0).multiple;
    }

    /** Largest multiple of the rating that one at this edge of the band carries continuously. */
    public double holdMultiple(Tripping edge) {
        if (edge != Tripping.SLOW || Double.isFinite(points.get(0).slowSeconds)) {
            return holdMultiple();
        }
        int first = 1;
        while (Double.isInfinite(points.get(first).slowSeconds)) {
            first++;
        }
        return JUST_BELOW * points.get(first).multiple;
    }

    /**
     * Time to open at a steady current, starting cold.
     *
     * @param multiple current as a multiple of the rating
     * @return time to open (s); infinite where it is carried continuously
     */
    public double secondsToOpen(double multiple, Tripping edge) {
        if (!(multiple > holdMultiple(edge))) {
            return Double.POSITIVE_INFINITY;
        }
        int last = points.size() - 1;
        if (multiple >= points.get(last).multiple) {
            double ratio = points.get(last).multiple / multiple;
            return Math.exp(points.get(last).logSeconds(edge)) * ratio * ratio;
        }
        int above = 1;
        while (points.get(above).multiple <= multiple) {
            above++;
        }
        CurvePoint low = points.get(above - 1);
        CurvePoint high = points.get(above);
        double share = Math.log(multiple / low.multiple) / Math.log(high.multiple / low.multiple);
        double logLow = low.logSeconds(edge);
        double logHigh = high.logSeconds(edge);
        return Math.exp(Double.isInfinite(logLow) ? logHigh : logLow + share * (logHigh - logLow));
    }
}
