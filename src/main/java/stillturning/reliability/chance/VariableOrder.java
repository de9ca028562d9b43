package stillturning.reliability.chance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * In which order a diagram asks for events. What appears together should be asked together, or the
 * diagram has to remember too much in between: each event moves to the middle of its sets, and each
 * set to the middle of its events, until the sets get no shorter.
 *
 * @see "F. A. Aloul, I. L. Markov, K. A. Sakallah, FORCE, GLSVLSI 2003 (from memory, unverified)"
 */
final class VariableOrder {
    private static final int MOST_ROUNDS = 200;

    /** Rounds without a gain that are waited for. */
    private static final int PATIENCE = 10;

    private final List<int[]> sets;
    private final int[] uses;

    VariableOrder(List<int[]> sets, int events) {
        this.sets = sets;
        uses = new int[events];
        sets.forEach(set -> IntStream.of(set).forEach(event -> uses[event]++));
    }

    /** Events by how often they appear, ties by number. */
    private int[] byUse() {
        return sorted(IntStream.of(uses).mapToDouble(use -> -use).toArray());
    }

    /** Events with their sets drawn together, starting from the order by use. */
    int[] together() {
        int[] order = byUse();
        int[] best = order;
        long shortest = length(placesOf(order));
        int waited = 0;
        for (int round = 0; round < MOST_ROUNDS && waited < PATIENCE; round++) {
            order = sorted(middles(placesOf(order)));
            long length = length(placesOf(order));
            waited++;
            if (length < shortest) {
                shortest = length;
                best = order;
                waited = 0;
            }
        }
        return best;
    }

    private double[] middles(int[] places) {
        double[] middles = new double[places.length];
        for (int[] set : sets) {
            double middle = IntStream.of(set).mapToDouble(e -> places[e]).sum() / set.length;
            for (int event : set) {
                middles[event] += middle / uses[event];
            }
        }
        return middles;
    }

    private long length(int[] places) {
        long length = 0;
        for (int[] set : sets) {
            int first = Integer.MAX_VALUE;
            int last = 0;
            for (int event : set) {
                first = Math.min(first, places[event]);
                last = Math.max(last, places[event]);
            }
            length += last - first;
        }
        return length;
    }

    static int[] placesOf(int[] order) {
        int[] places = new int[order.length];
        for (int place = 0; place < order.length; place++) {
            places[order[place]] = place;
        }
        return places;
    }

    private static int[] sorted(double[] keys) {
        Integer[] events = IntStream.range(0, keys.length).boxed().toArray(Integer[]::new);
        Arrays.sort(events, Comparator.comparingDouble(event -> keys[event]));
        return IntStream.range(0, keys.length).map(place -> events[place]).toArray();
    }
}
