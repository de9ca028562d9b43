package stillturning.reliability.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillturning.reliability.asbuilt.Compared.Agreement;

/**
 * Which single values would explain what was measured: each in turn is moved until the squares of
 * what is left over are least, readings answering in proportion.
 */
public final class SingleValueFits {

    private static final int MOST = 5;

    /** Less of the squares than this explains nothing. A guess. */
    private static final double LEAST_SHARE = 0.5;

    /** Further than so many times what the study leaves open, nobody believes it. A guess. */
    private static final double FURTHEST = 5;

    /** Errors that go more together than this, and the two cannot be told apart. A guess. */
    private static final double TOGETHER = 0.95;

    private final List<Compared> readings;
    private final double[] off;
    private final double[] errors;

    private SingleValueFits(List<Compared> readings) {
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
        SingleValueFits explaining = new SingleValueFits(readings);
        record Found(Explanation explanation, double share, int place) {}
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            double[] slope = slopes.get(i);
            double share = explaining.share(slope);
            if (share >= LEAST_SHARE) {
                Explanation one = explaining.explanation(values.get(i), slope);
                double moved = Math.abs(one.needed() - one.value().likely());
                boolean possible = one.value().likely() <= 0 || one.needed() > 0;
                if (one.mended() > 0 && possible && moved <= FURTHEST * one.value().half()) {
                    found.add(new Found(one, share, i));
                }
            }
        }
        return found.stream()
                .sorted(
                        Comparator.comparing((Found f) -> !f.explanation.likely())
                                .thenComparing(f -> -f.explanation.mended())
                                .thenComparing(f -> -f.share))
                .limit(MOST)
                .map(
                        f ->
                                f.explanation.alike(
                                        found.stream()
                                                .filter(g -> g.place != f.place)
                                                .filter(
                                                        g ->
                                                                explaining.alike(
                                                                        slopes.get(f.place),
                                                                        slopes.get(g.place)))
                                                .map(g -> g.explanation.value().name())
                                                .toList()))
                .toList();
    }

    /**
     * Pairs of values that explain together what no single one does, best first; none where a
     * single one explains as much, or where the readings cannot tell the two apart.
     *
     * @param readings that were measured
     * @param slopes how each reading answers to each value: a row a value
     */
    public static List<JointExplanation> together(
            List<Compared> readings, List<OpenValue> values, List<double[]> slopes) {
        SingleValueFits explaining = new SingleValueFits(readings);
        int alone =
                of(readings, values, slopes).stream()
                        .mapToInt(e -> e.mended() - e.spoilt())
                        .max()
                        .orElse(0);
        record Found(JointExplanation explanation, double left) {}
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            for (int j = i + 1; j < values.size(); j++) {
                if (!explaining.alike(slopes.get(i), slopes.get(j))) {
                    Solved both = explaining.solved(slopes.get(i), slopes.get(j));
                    JointExplanation one =
                            explaining.joint(List.of(values.get(i), values.get(j)), both);
                    if (one.mended() - one.spoilt() > alone && believable(one)) {
                        found.add(new Found(one, both.left));
                    }
                }
            }
        }
        return found.stream()
                .sorted(
                        Comparator.comparing((Found f) -> !f.explanation.likely())
                                .thenComparing(f -> -f.explanation.mended())
                                .thenComparing(Found::left))
                .limit(MOST)
                .map(Found::explanation)
                .toList();
    }

    /** Both are moved by more than chance, and neither further than anybody believes. */
    private static boolean believable(JointExplanation pair) {
        return List.of(pair.one(), pair.other()).stream()
                .allMatch(
                        n -> {
                            double moved = Math.abs(n.needed() - n.value().likely());
                            boolean possible = n.value().likely() <= 0 || n.needed() > 0;
                            return possible
                                    && moved > n.half()
                                    && moved <= FURTHEST * n.value().half();
                        });
    }

    /** Two values moved until least is left over. */
    private static final class Solved {

        /** By how much. */
        private final double[] moved;

        /** Halves of the intervals of 95 %. */
        private final double[] halves;

        private final double correlation;

        /** By how much each reading moves with them. */
        private final double[] predicted;

        /** Squares that are left over. */
        private final double left;

        Solved(
                double[] moved,
                double[] halves,
                double correlation,
                double[] predicted,
                double left) {
            this.moved = moved;
            this.halves = halves;
            this.correlation = correlation;
            this.predicted = predicted;
            this.left = left;
        }
    }

    private Solved solved(double[] one, double[] other) {
        double a = product(one, one);
        double b = product(one, other);
        double c = product(other, other);
        double determinant = a * c - b * b;
        double first = (c * product(one, off) - b * product(other, off)) / determinant;
        double second = (a * product(other, off) - b * product(one, off)) / determinant;
        double[] predicted = new double[off.length];
        double[] rest = new double[off.length];
        for (int i = 0; i < off.length; i++) {
            predicted[i] = one[i] * first + other[i] * second;
            rest[i] = off[i] - predicted[i];
        }
        return new Solved(
                new double[] {first, second},
                new double[] {2 * Math.sqrt(c / determinant), 2 * Math.sqrt(a / determinant)},
                -b / Math.sqrt(a * c),
                predicted,
                product(rest, rest));
    }

    private JointExplanation joint(List<OpenValue> values, Solved both) {
        int[] counts = counts(both.predicted);
        return new JointExplanation(
                needed(values.get(0), both, 0),
                needed(values.get(1), both, 1),
                both.correlation,
                counts[0],
                counts[1],
                counts[2]);
    }

    private static JointExplanation.Needed needed(OpenValue value, Solved both, int at) {
        return new JointExplanation.Needed(value, value.likely() + both.moved[at], both.halves[at]);
    }

    /** Whether readings answer to both in the same proportions, so that nothing parts them. */
    private boolean alike(double[] one, double[] other) {
        double lengths = product(one, one) * product(other, other);
        return !(lengths > 0) || Math.abs(product(one, other)) >= TOGETHER * Math.sqrt(lengths);
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
        double[] predicted = new double[off.length];
        for (int i = 0; i < off.length; i++) {
            predicted[i] = slope[i] * moved;
        }
        int[] counts = counts(predicted);
        return new Explanation(
                value,
                value.likely() + moved,
                2 / Math.sqrt(own),
                counts[0],
                counts[1],
                counts[2],
                List.of());
    }

    /** Readings that would be mended, that disagree, that would be spoilt. */
    private int[] counts(double[] predicted) {
        int mended = 0;
        int disagreeing = 0;
        int spoilt = 0;
        for (int i = 0; i < off.length; i++) {
            boolean disagrees = readings.get(i).verdict() == Agreement.DISAGREES;
            boolean then =
                    readings.get(i)
                            .expectation()
                            .holds(readings.get(i).measured().orElseThrow() - predicted[i]);
            disagreeing += disagrees ? 1 : 0;
            mended += disagrees && then ? 1 : 0;
            spoilt += !disagrees && !then ? 1 : 0;
        }
        return new int[] {mended, disagreeing, spoilt};
    }
}
