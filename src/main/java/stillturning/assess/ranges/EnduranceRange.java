package stillturning.assess.ranges;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stillturning.assess.verdict.Outcome;
import stillturning.story.Endurance;

/**
 * The endurance after one failure in one candidate, its inputs anywhere in their ranges.
 *
 * @param failure its name
 * @param inputs how many values were varied
 * @param quantiles low, middle and high endurance
 * @param outcomes number of samples by outcome, worst first
 * @param notLimited number of samples in which nothing ends the engine
 * @param contributors inputs that the endurance hangs on, the greatest share first
 * @param untold samples that could not be computed, each with its reason
 * @param brokenOff samples that could only be computed up to a moment, each with its reason; they
 *     count as engine lost, and as lasting until then
 */
public record EnduranceRange(
        String failure,
        int inputs,
        Quantiles quantiles,
        Map<Outcome, Integer> outcomes,
        int notLimited,
        List<Contributor> contributors,
        List<String> untold,
        List<String> brokenOff) {

    /** Share of samples below the low and above the high endurance. */
    public static final double TAIL = 0.05;

    /**
     * Endurance in order of length, of the samples that could be computed.
     *
     * @param low so many samples last no longer: {@link #TAIL}
     * @param median half of them last no longer
     * @param high all but {@link #TAIL} last no longer
     */
    public record Quantiles(Endurance low, Endurance median, Endurance high) {

        static Quantiles of(List<Endurance> sorted) {
            return new Quantiles(at(sorted, TAIL), at(sorted, 0.5), at(sorted, 1 - TAIL));
        }

        /** A value that occurred: between a finite and an endless one there is nothing. */
        private static Endurance at(List<Endurance> sorted, double share) {
            int rank = (int) Math.ceil(share * sorted.size() - 1e-9);
            return sorted.get(Math.max(0, rank - 1));
        }
    }

    /**
     * An input that the endurance hangs on.
     *
     * @param share of the variance of the endurance's ranks that it explains, 0 to 1
     * @param lengthens whether more of it means longer
     */
    public record Contributor(RangedInput input, double share, boolean lengthens) {}

    public EnduranceRange {
        Map<Outcome, Integer> worstFirst = new EnumMap<>(Outcome.class);
        worstFirst.putAll(outcomes);
        outcomes = Collections.unmodifiableMap(worstFirst);
        contributors = List.copyOf(contributors);
        untold = List.copyOf(untold);
        brokenOff = List.copyOf(brokenOff);
    }

    /** Number of samples that could be computed. */
    public int told() {
        return outcomes.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Share of the told samples with this outcome, 0 to 1. */
    public double shareOf(Outcome outcome) {
        return outcomes.getOrDefault(outcome, 0) / (double) told();
    }

    /** Share of the variance that no named input explains, 0 to 1. */
    public double unexplained() {
        return contributors.isEmpty()
                ? 1
                : Math.max(0, 1 - contributors.stream().mapToDouble(Contributor::share).sum());
    }
}
