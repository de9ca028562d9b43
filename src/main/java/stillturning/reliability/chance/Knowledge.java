package stillturning.reliability.chance;

import java.util.SortedSet;

/** What is uncertain about the events' rates, and what is wrong together. */
final class Knowledge {

    /** Standard deviation of the logarithm of each event's rate. */
    private final double[] sigmas;

    /** Where each event's rate is known from. */
    private final int[] sources;

    private Knowledge(double[] sigmas, int[] sources) {
        this.sigmas = sigmas;
        this.sources = sources;
    }

    static Knowledge of(Exposure exposure) {
        return new Knowledge(
                exposure.occurrences().stream().mapToDouble(o -> o.spread().sigma()).toArray(),
                exposure.sources().stream().mapToInt(source -> source).toArray());
    }

    /** The same with some events that are no longer uncertain. */
    Knowledge without(SortedSet<Integer> events) {
        double[] left = sigmas.clone();
        events.forEach(event -> left[event] = 0);
        return new Knowledge(left, sources);
    }

    boolean spreads(int[] set) {
        for (int event : set) {
            if (sigmas[event] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Sum of the sigmas of one source in a set. */
    double sigmas(int[] set, int source) {
        double sum = 0;
        for (int event : set) {
            sum += sources[event] == source ? sigmas[event] : 0;
        }
        return sum;
    }

    /** Mean of the product of a set's rates over the product of their medians. */
    double meanOverMedian(int[] set) {
        double squares = 0;
        for (int event : set) {
            squares += sigmas[event] * sigmas[event] / 2;
        }
        return StrictMath.exp(squares) * meanOverMeans(set);
    }

    /** Mean of the product of a set's rates over the product of their means; 1 or above. */
    double meanOverMeans(int[] set) {
        double together = 0;
        for (int i = 1; i < set.length; i++) {
            for (int j = 0; j < i; j++) {
                if (sources[set[i]] == sources[set[j]]) {
                    together += sigmas[set[i]] * sigmas[set[j]];
                }
            }
        }
        return together == 0 ? 1 : StrictMath.exp(together);
    }
}
