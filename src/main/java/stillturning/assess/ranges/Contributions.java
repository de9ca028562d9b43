package stillturning.assess.ranges;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/**
 * Which inputs an outcome hangs on: forward selection on ranks. The input that explains most of
 * what is left of the outcome's variance is taken, its part is removed from the outcome and from
 * all other inputs, and so on until no input stands out from chance. Ranks, because an endless
 * endurance has a rank but no value; forward, because each step lowers the noise in which the
 * lesser contributors would drown among hundreds of inputs. For an outcome that rises or falls with
 * each input the shares are first-order shares of the ranks' variance; effects of inputs that only
 * act together stay unexplained.
 */
final class Contributions {

    /**
     * An input counts only if chance would bring its share of what is left this seldom: F with one
     * degree of freedom above 20 happens once in 100,000 times.
     */
    private static final double STANDS_OUT = 20;

    /** What explains less than this of all is left unnamed. */
    private static final double LEAST_SHARE = 0.01;

    private final double[][] columns;
    private final double[] rest;
    private final double all;

    /** One input's part. */
    record InputShare(int input, double share, boolean rises) {}

    /**
     * @param inputs value by sample and input
     * @param outcome value by sample, may be infinite
     */
    Contributions(double[][] inputs, double[] outcome) {
        NaturalRanking ranking = new NaturalRanking(NaNStrategy.FAILED, TiesStrategy.AVERAGE);
        int count = inputs.length == 0 ? 0 : inputs[0].length;
        columns = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] column = new double[inputs.length];
            for (int n = 0; n < inputs.length; n++) {
                column[n] = inputs[n][i];
            }
            columns[i] = centred(ranking.rank(column));
        }
        rest = centred(ranking.rank(outcome));
        all = product(rest, rest);
    }

    /** The parts that stand out, the greatest first. */
    List<InputShare> parts() {
        List<InputShare> parts = new ArrayList<>();
        for (int free = rest.length - 2; free > 0 && all > 0; free--) {
            int best = best();
            if (best < 0) {
                break;
            }
            double[] column = columns[best].clone();
            double slope = product(column, rest) / product(column, column);
            double explained = slope * product(column, rest);
            double left = product(rest, rest) - explained;
            if (explained / all < LEAST_SHARE || explained * free < STANDS_OUT * left) {
                break;
            }
            parts.add(new InputShare(best, explained / all, slope > 0));
            remove(column, rest);
            for (double[] other : columns) {
                remove(column, other);
            }
        }
        parts.sort((a, b) -> Double.compare(b.share, a.share));
        return parts;
    }

    /** The column that explains most; -1 if none has anything left. */
    private int best() {
        int best = -1;
        double most = 0;
        for (int i = 0; i < columns.length; i++) {
            double own = product(columns[i], columns[i]);
            double common = product(columns[i], rest);
            if (own > 1e-6 * rest.length && common * common / own > most) {
                most = common * common / own;
                best = i;
            }
        }
        return best;
    }

    private static void remove(double[] column, double[] from) {
        double slope = product(column, from) / product(column, column);
        for (int n = 0; n < from.length; n++) {
            from[n] -= slope * column[n];
        }
    }

    private static double[] centred(double[] values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double[] centred = values.clone();
        for (int n = 0; n < centred.length; n++) {
            centred[n] -= mean;
        }
        return centred;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += a[n] * b[n];
        }
        return sum;
    }
}
