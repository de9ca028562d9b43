package stillturning.model.goal;

import java.util.EnumMap;
import java.util.Map;

/**
 * How much one of each count adds to complexity.
 *
 * @param stated those that the study states
 */
public record ComplexityWeights(Map<ComplexityCount, Double> stated) {

    /** Where nothing is stated. */
    public static final ComplexityWeights USUAL = new ComplexityWeights(Map.of());

    public ComplexityWeights {
        stated.forEach(
                (count, weight) -> {
                    if (!(weight >= 0) || Double.isInfinite(weight)) {
                        throw new IllegalArgumentException(
                                count.words()
                                        + ": weight "
                                        + weight
                                        + " is not finite and at least 0");
                    }
                });
        stated = Map.copyOf(stated);
    }

    /** What one of a count adds. */
    public double of(ComplexityCount count) {
        return stated.getOrDefault(count, count.usualWeight());
    }

    /** The same with another weight of one count. */
    public ComplexityWeights with(ComplexityCount count, double weight) {
        Map<ComplexityCount, Double> other = new EnumMap<>(ComplexityCount.class);
        other.putAll(stated);
        other.put(count, weight);
        return new ComplexityWeights(other);
    }
}
