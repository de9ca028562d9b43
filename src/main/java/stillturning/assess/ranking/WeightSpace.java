package stillturning.assess.ranking;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Draws weightings evenly from all that are at least 0 and sum to 1, and counts who comes where.
 */
final class WeightSpace {
    /** Shares to 0.5 percentage points at 95 %: 0.98 / sqrt(40,000). */
    private static final int WEIGHTINGS = 40_000;

    private static final long SEED = 20_011L;

    private final ScoreTable table;
    private final int criteria;
    private final double[][] rankCounts;
    private final double[][] weightSums;

    private WeightSpace(ScoreTable table) {
        this.table = table;
        criteria = table.scales().size();
        rankCounts = new double[table.size()][table.size()];
        weightSums = new double[table.size()][criteria];
    }

    static Robustness robustness(ScoreTable table, List<Integer> order) {
        WeightSpace space = new WeightSpace(table);
        SplittableRandom random = new SplittableRandom(SEED);
        double[] weights = new double[space.criteria];
        for (int draw = 0; draw < WEIGHTINGS; draw++) {
            draw(random, weights);
            space.count(weights);
        }
        return new Robustness(
                WEIGHTINGS,
                1.96 * 0.5 / Math.sqrt(WEIGHTINGS),
                order.stream().map(space::shares).toList());
    }

    /** Unit exponentials over their sum are uniform on the simplex. */
    static void draw(SplittableRandom random, double[] weights) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            weights[j] = -StrictMath.log(1 - random.nextDouble());
            sum += weights[j];
        }
        for (int j = 0; j < weights.length; j++) {
            weights[j] /= sum;
        }
    }

    private void count(double[] weights) {
        int candidates = table.size();
        double[] totals = new double[candidates];
        for (int i = 0; i < candidates; i++) {
            totals[i] = table.total(i, weights);
        }
        for (int i = 0; i < candidates; i++) {
            int ahead = 0;
            int level = 0;
            for (int k = 0; k < candidates; k++) {
                int order = order(i, k, totals);
                ahead += order > 0 ? 1 : 0;
                level += order == 0 ? 1 : 0;
            }
            share(i, ahead, level, weights);
        }
    }

    /** Above 0 where {@code k} stands before {@code i}. */
    private int order(int i, int k, double[] totals) {
        int byGates = Integer.compare(table.missed(i), table.missed(k));
        if (byGates != 0) {
            return byGates;
        }
        double lead = totals[k] - totals[i];
        return Math.abs(lead) <= ScoreTable.LEVEL ? 0 : (int) Math.signum(lead);
    }

    private void share(int candidate, int ahead, int level, double[] weights) {
        double part = 1.0 / level;
        for (int rank = ahead; rank < ahead + level; rank++) {
            rankCounts[candidate][rank] += part;
        }
        if (ahead == 0) {
            for (int j = 0; j < criteria; j++) {
                weightSums[candidate][j] += part * weights[j];
            }
        }
    }

    private RankShares shares(int candidate) {
        double first = rankCounts[candidate][0];
        List<Double> byRank =
                Arrays.stream(rankCounts[candidate]).mapToObj(count -> count / WEIGHTINGS).toList();
        List<Double> central =
                IntStream.range(0, first > 0 ? criteria : 0)
                        .mapToObj(j -> weightSums[candidate][j] / first)
                        .toList();
        return new RankShares(table.alternative(candidate).name(), byRank, central);
    }
}
