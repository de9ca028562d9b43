package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.List;

/**
 * The union of cut sets by sums of intersections, for the average flight, every rate at its mean: a
 * second way to the program's answer, which the handbooks print.
 *
 * @param sums the k-th is the sum over all k cut sets of the probability that all come true
 * @param complete whether no further sum is left, so that the last partial sum is the answer
 * @see "C. E. Bonferroni 1936 (from memory, unverified)"
 */
record InclusionExclusion(List<Double> sums, boolean complete) {

    /** Intersections to add up at most for one more sum. */
    private static final double MOST_INTERSECTIONS = 1e7;

    InclusionExclusion {
        sums = List.copyOf(sums);
    }

    /**
     * @param most sums wanted; fewer come back where the next has more than ten million terms
     */
    static InclusionExclusion of(CutUnion union, Exposure exposure, int most) {
        FlightProbabilities course = new FlightProbabilities(exposure, union.highestOrder());
        Flights flights = course.flights(course.means());
        List<int[]> sets =
                union.sets().stream()
                        .map(set -> set.stream().mapToInt(Integer::intValue).toArray())
                        .toList();
        List<Double> sums = new ArrayList<>();
        double terms = 1;
        for (int order = 1; order <= Math.min(most, union.size()); order++) {
            terms *= (union.size() - order + 1.0) / order;
            if (terms > MOST_INTERSECTIONS) {
                break;
            }
            int k = order;
            sums.add(flights.of(chances -> new Choices(sets, chances).of(k)).average());
        }
        return new InclusionExclusion(sums, sums.size() == union.size());
    }

    /** Sums over all choices of so many sets of the probability that all come true. */
    private static final class Choices {
        private final List<int[]> sets;
        private final double[] chances;
        private final int[] uses;

        Choices(List<int[]> sets, double[] chances) {
            this.sets = sets;
            this.chances = chances;
            this.uses = new int[chances.length];
        }

        double of(int order) {
            return from(0, order, 1);
        }

        private double from(int first, int order, double probability) {
            if (order == 0) {
                return probability;
            }
            double sum = 0;
            for (int i = first; i <= sets.size() - order; i++) {
                double with = probability;
                for (int event : sets.get(i)) {
                    if (uses[event]++ == 0) {
                        with *= chances[event];
                    }
                }
                sum += from(i + 1, order - 1, with);
                for (int event : sets.get(i)) {
                    uses[event]--;
                }
            }
            return sum;
        }
    }

    /** Alternately above and below the truth. */
    List<Double> partialSums() {
        List<Double> partial = new ArrayList<>();
        double sum = 0;
        for (int k = 0; k < sums.size(); k++) {
            sum += k % 2 == 0 ? sums.get(k) : -sums.get(k);
            partial.add(sum);
        }
        return List.copyOf(partial);
    }
}
