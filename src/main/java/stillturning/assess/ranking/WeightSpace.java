package stillturning.assess.ranking;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Fills all weightings that are admissible evenly, and counts who comes where. The same points,
 * multiples of irrational steps, are laid down a number of times, each time shifted at random as a
 * whole; how far the shares of these sets differ says how exact their mean is. A Sobol sequence
 * would be worse: the borders between two firsts often run along its grid.
 *
 * @see "H. Niederreiter, Random Number Generation and Quasi-Monte Carlo Methods (1992), on
 *     multiples of irrational numbers; R. Cranley, T. Patterson, SIAM J. Numer. Anal. 13 (1976)
 *     904-914, on random shifts (both from memory)"
 */
final class WeightSpace {

    private static final int SETS = 16;
    private static final int POINTS = 2048;

    /** Student's t of 15 degrees of freedom that 2.5 % exceed. */
    private static final double STUDENT = 2.131;

    private static final long SEED = 20_011L;

    /** Each repetition of the root's search brings it at least twice as near. */
    private static final int SETTLED = 60;

    private final ScoreTable table;
    private final AdmissibleWeights admissible;
    private final int criteria;
    private final int sets;
    private final int points;
    private final double[][][] rankCounts;
    private final double[][] weightSums;

    private WeightSpace(ScoreTable table, AdmissibleWeights admissible) {
        this.table = table;
        this.admissible = admissible;
        criteria = table.scales().size();
        boolean single = admissible.dimensions() == 0;
        sets = single ? 1 : SETS;
        points = single ? 1 : POINTS;
        rankCounts = new double[sets][table.size()][table.size()];
        weightSums = new double[table.size()][criteria];
    }

    static Robustness robustness(
            ScoreTable table, List<Integer> order, AdmissibleWeights admissible) {
        WeightSpace space = new WeightSpace(table, admissible);
        space.fill();
        return new Robustness(
                space.sets * space.points,
                space.error(),
                order.stream().map(space::shares).toList());
    }

    private void fill() {
        SplittableRandom random = new SplittableRandom(SEED);
        double[][] unshifted = unshifted(admissible.dimensions(), points);
        double[] point = new double[admissible.dimensions()];
        double[] weights = new double[criteria];
        for (int set = 0; set < sets; set++) {
            double[] shift = random.doubles(point.length).toArray();
            for (double[] from : unshifted) {
                for (int d = 0; d < point.length; d++) {
                    double moved = from[d] + shift[d];
                    point[d] = moved - Math.floor(moved);
                }
                admissible.at(point, weights);
                count(weights, rankCounts[set]);
            }
        }
    }

    private static double[][] unshifted(int dimensions, int points) {
        double[][] all = new double[points][dimensions];
        double ratio = goldenRatio(dimensions);
        for (int d = 0; d < dimensions; d++) {
            double step = StrictMath.pow(ratio, -(d + 1));
            for (int i = 0; i < points; i++) {
                double place = (i + 1) * step;
                all[i][d] = place - Math.floor(place);
            }
        }
        return all;
    }

    /** The root of x^(d+1) = x + 1, whose powers no sum of fractions comes near. */
    private static double goldenRatio(int dimensions) {
        double ratio = 1.5;
        for (int i = 0; i < SETTLED; i++) {
            ratio = StrictMath.pow(1 + ratio, 1.0 / (dimensions + 1));
        }
        return ratio;
    }

    private void count(double[] weights, double[][] counts) {
        int candidates = table.size();
        long[] totals = new long[candidates];
        for (int i = 0; i < candidates; i++) {
            totals[i] = ScoreTable.steps(table.total(i, weights));
        }
        for (int i = 0; i < candidates; i++) {
            int ahead = 0;
            int level = 0;
            for (int k = 0; k < candidates; k++) {
                int order = order(i, k, totals);
                ahead += order > 0 ? 1 : 0;
                level += order == 0 ? 1 : 0;
            }
            share(i, ahead, level, weights, counts[i]);
        }
    }

    /** Above 0 where {@code k} stands before {@code i}. */
    private int order(int i, int k, long[] totals) {
        int byGates = Integer.compare(table.missed(i), table.missed(k));
        return byGates != 0 ? byGates : Long.compare(totals[k], totals[i]);
    }

    private void share(int candidate, int ahead, int level, double[] weights, double[] counts) {
        double part = 1.0 / level;
        for (int rank = ahead; rank < ahead + level; rank++) {
            counts[rank] += part;
        }
        if (ahead == 0) {
            for (int j = 0; j < criteria; j++) {
                weightSums[candidate][j] += part * weights[j];
            }
        }
    }

    /** Half width of the 95 % interval of the share that is the least exact. */
    private double error() {
        double widest = 0;
        for (int i = 0; i < table.size(); i++) {
            for (int rank = 0; rank < table.size(); rank++) {
                widest = Math.max(widest, deviation(i, rank));
            }
        }
        return sets == 1 ? 0 : STUDENT * widest / Math.sqrt(sets);
    }

    private double deviation(int candidate, int rank) {
        double mean = share(candidate, rank);
        double squares = 0;
        for (double[][] counts : rankCounts) {
            double off = counts[candidate][rank] / points - mean;
            squares += off * off;
        }
        return sets == 1 ? 0 : Math.sqrt(squares / (sets - 1));
    }

    private double share(int candidate, int rank) {
        double sum = 0;
        for (double[][] counts : rankCounts) {
            sum += counts[candidate][rank];
        }
        return sum / (sets * points);
    }

    private RankShares shares(int candidate) {
        List<Double> byRank =
                IntStream.range(0, table.size()).mapToObj(rank -> share(candidate, rank)).toList();
        double first = byRank.get(0) * sets * points;
        List<Double> central =
                IntStream.range(0, first > 0 ? criteria : 0)
                        .mapToObj(j -> weightSums[candidate][j] / first)
                        .toList();
        return new RankShares(table.alternative(candidate).name(), byRank, central);
    }
}
