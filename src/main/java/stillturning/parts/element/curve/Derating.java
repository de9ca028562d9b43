package stillturning.parts.element.curve;

import java.util.List;

/** How much less a protector carries where it is warm, as a share of its rating. */
public sealed interface Derating {

    /** Temperature at which time–current curves are published: 23 to 25 °C. */
    double PUBLISHED_CELSIUS = 25;

    /** Where the numbers come from. */
    String source();

    /**
     * Share of the rating that counts in a place.
     *
     * @param celsius temperature around the protector (°C)
     * @return above 0; 1 where the curve was published
     */
    double share(double celsius);

    /** The place does not matter. */
    record None(String source) implements Derating {
        @Override
        public double share(double celsius) {
            return 1;
        }
    }

    /**
     * Published points, straight in between; beyond either end the nearest of them.
     *
     * @param points by rising temperature
     */
    record Published(String source, List<Point> points) implements Derating {

        /** Temperature (°C) and share of the rating. */
        public record Point(double celsius, double share) {
            public Point {
                Require.positive("derating", "share of the rating", share);
            }
        }

        public Published {
            points = List.copyOf(points);
            for (int i = 1; i < points.size(); i++) {
                if (!(points.get(i).celsius > points.get(i - 1).celsius)) {
                    throw new IllegalArgumentException(
                            "derating " + source + ": temperatures do not rise");
                }
            }
        }

        @Override
        public double share(double celsius) {
            Point low = points.get(0);
            for (Point high : points) {
                if (celsius <= high.celsius) {
                    double part = (celsius - low.celsius) / (high.celsius - low.celsius);
                    return low.equals(high)
                            ? low.share
                            : low.share + part * (high.share - low.share);
                }
                low = high;
            }
            return low.share;
        }
    }

    /**
     * What opens when its metal is this hot. Losses grow with the square of the current, so what
     * the place already warms is missing from the square.
     *
     * @param celsius temperature at which it opens (°C), above the published curve's
     */
    record OpensAt(String source, double celsius) implements Derating {

        /** In a place as hot as that nothing is carried; a share must stay above 0 all the same. */
        private static final double LEAST = 1e-6;

        public OpensAt {
            Require.positive(
                    "derating", "opening temperature above 25 °C", celsius - PUBLISHED_CELSIUS);
        }

        @Override
        public double share(double around) {
            return Math.sqrt(Math.max(LEAST, (celsius - around) / (celsius - PUBLISHED_CELSIUS)));
        }
    }
}
