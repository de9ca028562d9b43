package stillturning.assess.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All weightings that are at least 0, sum to 1, and agree with what is known of their order. Points
 * of a cube are laid into them so that even points stay even: the gaps between sorted numbers are
 * even on all weightings; sorted by size and given to the criteria in one of the orders that agree,
 * each as likely as any other, they are even on those that agree.
 */
final class AdmissibleWeights {

    private final int criteria;
    private final List<int[]> orders;

    private AdmissibleWeights(int criteria, List<int[]> orders) {
        this.criteria = criteria;
        this.orders = orders;
    }

    /**
     * The weightings of some criteria.
     *
     * @throws IllegalArgumentException if a statement names no criterion, or they contradict
     */
    static AdmissibleWeights of(List<String> criteria, List<WeightOrder> known) {
        if (known.isEmpty()) {
            return new AdmissibleWeights(criteria.size(), List.of());
        }
        boolean[][] heavier = new boolean[criteria.size()][criteria.size()];
        for (WeightOrder statement : known) {
            int one = criteria.indexOf(statement.heavier());
            int other = criteria.indexOf(statement.lighter());
            if (one < 0 || other < 0) {
                throw new IllegalArgumentException(statement + " is not about " + criteria);
            }
            heavier[one][other] = true;
        }
        List<int[]> orders = new ArrayList<>();
        collect(heavier, new int[criteria.size()], 0, orders);
        if (orders.isEmpty()) {
            throw new IllegalArgumentException("no weighting agrees with all of " + known);
        }
        return new AdmissibleWeights(criteria.size(), orders);
    }

    /** Every order, heaviest first, in which no criterion stands before one that is heavier. */
    private static void collect(boolean[][] heavier, int[] order, int length, List<int[]> found) {
        if (length == order.length) {
            found.add(order.clone());
            return;
        }
        for (int next = 0; next < order.length; next++) {
            if (isFree(heavier, order, length, next)) {
                order[length] = next;
                collect(heavier, order, length + 1, found);
            }
        }
    }

    private static boolean isFree(boolean[][] heavier, int[] order, int length, int next) {
        boolean[] placed = new boolean[order.length];
        for (int k = 0; k < length; k++) {
            placed[order[k]] = true;
        }
        for (int other = 0; other < order.length; other++) {
            if (!placed[other] && (other == next ? heavier[next][next] : heavier[other][next])) {
                return false;
            }
        }
        return !placed[next];
    }

    /** How many numbers from 0 to 1 make a weighting. */
    int dimensions() {
        return criteria - 1 + (orders.size() > 1 ? 1 : 0);
    }

    /** The weighting of a point of the cube. */
    void at(double[] point, double[] weights) {
        double[] cuts = Arrays.copyOf(point, criteria - 1);
        Arrays.sort(cuts);
        double before = 0;
        for (int j = 0; j < criteria - 1; j++) {
            weights[j] = cuts[j] - before;
            before = cuts[j];
        }
        weights[criteria - 1] = 1 - before;
        if (!orders.isEmpty()) {
            double[] sorted = weights.clone();
            Arrays.sort(sorted);
            int[] order = orders.get(chosen(point));
            for (int k = 0; k < criteria; k++) {
                weights[order[k]] = sorted[criteria - 1 - k];
            }
        }
    }

    private int chosen(double[] point) {
        return orders.size() == 1 ? 0 : (int) (point[criteria - 1] * orders.size());
    }
}
