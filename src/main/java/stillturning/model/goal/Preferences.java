package stillturning.model.goal;

import java.util.List;
import java.util.Optional;
import stillturning.model.CriterionName;
import stillturning.model.Study.Weight;

/**
 * What the builder prefers.
 *
 * @param weights by criterion, in the study's order; a criterion that is not there does not count
 * @param scales those that the study states
 */
public record Preferences(List<Weight> weights, List<ValueScale> scales) {

    public Preferences {
        weights = List.copyOf(weights);
        scales = List.copyOf(scales);
    }

    /** Weights beside which no scale is stated. */
    public static Preferences of(List<Weight> weights) {
        return new Preferences(weights, List.of());
    }

    /** The same with other weights. */
    public Preferences weighed(List<Weight> others) {
        return new Preferences(others, scales);
    }

    /** The scale that is stated for a criterion. */
    public Optional<ValueScale> scale(CriterionName criterion) {
        return scales.stream().filter(s -> s.criterion() == criterion).findFirst();
    }
}
