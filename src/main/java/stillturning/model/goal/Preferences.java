package stillturning.model.goal;

import java.util.List;
import java.util.Optional;
import stillturning.model.Study.Weight;

/**
 * What the builder prefers.
 *
 * @param weights by criterion, in the study's order; a criterion that is not there does not count
 * @param scales those that the study states
 * @param importances what is known for certain of the order of the weights
 * @param complexity what one of each count adds to complexity
 */
public record Preferences(
        List<Weight> weights,
        List<ValueScale> scales,
        List<CriterionOrder> importances,
        ComplexityWeights complexity) {

    public Preferences {
        weights = List.copyOf(weights);
        scales = List.copyOf(scales);
        importances = List.copyOf(importances);
    }

    /** Weights beside which nothing is stated. */
    public static Preferences of(List<Weight> weights) {
        return new Preferences(weights, List.of(), List.of(), ComplexityWeights.USUAL);
    }

    /** The same with other weights. */
    public Preferences weighed(List<Weight> others) {
        return new Preferences(others, scales, importances, complexity);
    }

    /** The same with other scales. */
    public Preferences scaled(List<ValueScale> others) {
        return new Preferences(weights, others, importances, complexity);
    }

    /** The same with other things known of the order of the weights. */
    public Preferences knowing(List<CriterionOrder> others) {
        return new Preferences(weights, scales, others, complexity);
    }

    /** The scale that is stated for a criterion. */
    public Optional<ValueScale> scale(CriterionName criterion) {
        return scales.stream().filter(s -> s.criterion() == criterion).findFirst();
    }
}
