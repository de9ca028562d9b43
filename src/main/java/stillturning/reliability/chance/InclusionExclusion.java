package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.List;

/**
 * The union by sums of intersections, for the average flight: a second way to the same answer.
 *
 * @param sums the k-th is the sum over all k cut sets of the probability that all come true
 * @param complete whether no further sum is left, so that the last partial sum is the answer
 * @see "C. E. Bonferroni 1936 (from memory, unverified)"
 */
public record InclusionExclusion(List<Double> sums, boolean complete) {

    public InclusionExclusion {
        sums = List.copyOf(sums);
    }

    /** Alternately above and below the truth. */
    public List<Double> partialSums() {
        List<Double> partial = new ArrayList<>();
        double sum = 0;
        for (int k = 0; k < sums.size(); k++) {
            sum += k % 2 == 0 ? sums.get(k) : -sums.get(k);
            partial.add(sum);
        }
        return List.copyOf(partial);
    }
}
