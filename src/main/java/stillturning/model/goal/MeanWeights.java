package stillturning.model.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.model.Study.Weight;

/**
 * The weights of one who knows none: the mean of all that agree with what is known of their order.
 * Where the order is known throughout these are the rank-order centroid weights.
 *
 * @see "F. Barron, B. Barrett, Management Science 42 (1996) 1515-1523 (from memory)"
 */
public final class MeanWeights {

    private final List<CriterionName> criteria;
    private final List<CriterionOrder> known;
    private final double[] sums;
    private int orders;

    private MeanWeights(List<CriterionName> criteria, List<CriterionOrder> known) {
        this.criteria = criteria;
        this.known = known;
        sums = new double[criteria.size()];
    }

    /** The mean weights, summing to 1; empty where no weighting agrees with what is known. */
    public static Optional<List<Weight>> of(
            List<CriterionName> criteria, List<CriterionOrder> known) {
        MeanWeights mean = new MeanWeights(criteria, known);
        mean.collect(new ArrayList<>());
        return mean.orders == 0 ? Optional.empty() : Optional.of(mean.weights());
    }

    /** Every order, heaviest first, in which none stands before one that matters more. */
    private void collect(List<CriterionName> order) {
        if (order.size() == criteria.size()) {
            add(order);
            return;
        }
        for (CriterionName next : criteria) {
            boolean free =
                    known.stream()
                            .filter(k -> k.lighter() == next)
                            .allMatch(k -> order.contains(k.heavier()));
            if (free && !order.contains(next)) {
                order.add(next);
                collect(order);
                order.remove(order.size() - 1);
            }
        }
    }

    /** The k-th largest of n weights is 1/n · (1/k + … + 1/n) on average. */
    private void add(List<CriterionName> order) {
        orders++;
        double tail = 0;
        for (int k = order.size(); k >= 1; k--) {
            tail += 1.0 / k / order.size();
            sums[criteria.indexOf(order.get(k - 1))] += tail;
        }
    }

    private List<Weight> weights() {
        List<Weight> weights = new ArrayList<>();
        for (int j = 0; j < sums.length; j++) {
            weights.add(new Weight(criteria.get(j), sums[j] / orders));
        }
        return List.copyOf(weights);
    }
}
