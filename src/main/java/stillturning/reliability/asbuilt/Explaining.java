package stillturning.reliability.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillturning.reliability.asbuilt.Compared.Verdict;

/**
 * Which single values would explain what was measured: each in turn is moved until the squares of
 * what is left over are least, readings answering in proportion.
 */
public final class Explaining {

    private static final int MOST = 5;

    /** Less of the squares than this explains nothing. A guess. */
    private static final double LEAST_SHARE = 0.5;

    /** Further than so many times what the study leaves open, nobody believes it. A guess. */
    private static final double FURTHEST = 5;

    private final List<Compared> readings;
    private final double[] off;
    private final double[] errors;

    private Explaining(List<Compared> readings) {
        this.readings = readings;
        this.off =
                readings.stream()
                        .mapToDouble(r -> r.measured().orElseThrow() - r.expectation().predicted())
                        .toArray();
        // limits are taken for 95 % of a normal distribution
        this.errors =
                readings.stream()
                        .mapToDouble(r -> (r.expectation().high() - r.expectation().low()) / 4)
                        .toArray();
    }

    /**
     * The values that explain most, best first.
     *
     * @param readings that were measured
     * @param slopes how each reading answers to each value: a row a value
     */
    public static List<Explanation> of(
            List<Compared> readings, List<OpenValue> values, List<double[]> slopes) {
        Explaining explaining = new Explaining(readings);
        record Found(Explanation explanation, double share) {}
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            double[] slope = slopes.get(i);
            double share = explaining.share(slope);
            if (share >= LEAST_SHARE) {
                Explanation one = explaining.explanation(values.get(i), slope);
                double moved = Math.abs(one.needed() - one.value().likely());
                boolean possible = one.value().likely() <= 0 || one.needed() > 0;
                if (one.mended() > 0 && possible && moved <= FURTHEST * one.value().half()) {
                    found.add(new Found(one, share));
                }
            }
        }
        return found.stream()
                .sorted(
                        Comparator.comparing((Found f) -> !f.explanation.likely())
                                .thenComparing(f -> -f.explanation.mended())
                                .thenComparing(f -> -f.share))
                .limit(MOST)
                .map(Found::explanation)
                .toList();
    }

    private double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i] / (errors[i] * errors[i]);
        }
        return sum;
    }

    private double share(double[] slope) {
        double own = product(slope, slope);
        double all = product(off, off);
        double with = product(slope, off);
        return own > 0 && all > 0 ? with * with / own / all : 0;
    }

    private Explanation explanation(OpenValue value, double[] slope) {
        double own = product(slope, slope);
        double moved = product(slope, off) / own;
        int mended = 0;
        int disagreeing = 0;
        int spoilt = 0;
        for (int i = 0; i < off.length; i++) {
            boolean disagrees = readings.get(i).verdict() == Verdict.DISAGREES;
            double shift = slope[i] * moved;
            boolean then =
                    readings.get(i)
                            .expectation()
                            .holds(readings.get(i).measured().orElseThrow() - shift);
            disagreeing += disagrees ? 1 : 0;
            mended += disagrees && then ? 1 : 0;
            spoilt += !disagrees && !then ? 1 : 0;
        }
        return new Explanation(
                value, value.likely() + moved, 2 / Math.sqrt(own), mended, disagreeing, spoilt);
    }
}
