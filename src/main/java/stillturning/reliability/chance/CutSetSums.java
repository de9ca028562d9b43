package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What can be said from the probabilities of the cut sets alone. As a top: the upper bound. */
final class CutSetSums implements Top {
    /** Pairs are formed among so many sets, the likeliest: a union of fewer is still below. */
    private static final int PAIRED = 3000;

    private final List<int[]> sets;

    CutSetSums(List<int[]> sets) {
        this.sets = sets;
    }

    @Override
    public int scratch(int flights) {
        return 0;
    }

    @Override
    public double[] at(List<double[]> chances, double[] scratch) {
        return chances.stream().mapToDouble(this::upperBound).toArray();
    }

    /** The min-cut upper bound 1 - Π(1 - P). */
    double upperBound(double[] chances) {
        double any = 0;
        for (int[] set : sets) {
            // 1 - (1 - a)(1 - b), without losing what is small
            any += chance(set, chances) * (1 - any);
        }
        return any;
    }

    /** ΣP. */
    double rareEventSum(double[] chances) {
        double sum = 0;
        for (int[] set : sets) {
            sum += chance(set, chances);
        }
        return sum;
    }

    /** ΣP of the sets that have any of the marked events. */
    double rareEventSum(double[] chances, boolean[] marked) {
        double sum = 0;
        for (int[] set : sets) {
            if (touches(set, marked)) {
                sum += chance(set, chances);
            }
        }
        return sum;
    }

    /** ΣP in the mean of what the rates may be, from chances by their means. */
    double knownSum(double[] chances, Knowledge known) {
        double sum = 0;
        for (int[] set : sets) {
            sum += chance(set, chances) * known.meanOverMeans(set);
        }
        return sum;
    }

    /** The same of the sets that have any of the marked events. */
    double knownSum(double[] chances, Knowledge known, boolean[] marked) {
        double sum = 0;
        for (int[] set : sets) {
            if (touches(set, marked)) {
                sum += chance(set, chances) * known.meanOverMeans(set);
            }
        }
        return sum;
    }

    List<int[]> sets() {
        return sets;
    }

    static boolean touches(int[] set, boolean[] marked) {
        for (int event : set) {
            if (marked[event]) {
                return true;
            }
        }
        return false;
    }

    /**
     * The best lower bound that follows from single sets and pairs.
     *
     * @see "D. A. Dawson, D. Sankoff, Proc. Amer. Math. Soc. 18 (1967) 504-507 (from memory,
     *     unverified)"
     */
    double lowerBound(double[] chances) {
        List<int[]> likeliest = likeliest(chances);
        double singles = 0;
        double squares = 0;
        double together = 0;
        List<List<int[]>> earlierWith = new ArrayList<>();
        for (int event = 0; event < chances.length; event++) {
            earlierWith.add(new ArrayList<>(0));
        }
        for (int[] set : likeliest) {
            double chance = chance(set, chances);
            singles += chance;
            squares += chance * chance;
            for (int event : set) {
                for (int[] earlier : earlierWith.get(event)) {
                    together += chance * moreTogether(set, earlier, event, chances);
                }
                earlierWith.get(event).add(set);
            }
        }
        double pairs = (singles * singles - squares) / 2 + together;
        if (singles == 0) {
            return 0;
        }
        double among = 1 + Math.floor(2 * pairs / singles);
        return 2 / (among + 1) * (singles - pairs / among);
    }

    private List<int[]> likeliest(double[] chances) {
        List<int[]> possible = new ArrayList<>(sets);
        possible.removeIf(set -> chance(set, chances) == 0);
        // the sort is stable, so equals stay in their order
        possible.sort(Comparator.comparingDouble(set -> -chance(set, chances)));
        return possible.subList(0, Math.min(PAIRED, possible.size()));
    }

    /**
     * By how much likelier an earlier set is once another is true, since they share events; 0
     * unless the event is the first that they share, so that a pair counts once.
     */
    private static double moreTogether(int[] set, int[] earlier, int event, double[] chances) {
        double shared = 1;
        int i = 0;
        for (int other : earlier) {
            while (i < set.length && set[i] < other) {
                i++;
            }
            if (i < set.length && set[i] == other) {
                if (other < event) {
                    return 0;
                }
                shared *= chances[other];
            }
        }
        double alone = chance(earlier, chances);
        return alone / shared - alone;
    }

    /** That all of a set come true. */
    static double chance(int[] set, double[] chances) {
        double chance = 1;
        for (int event : set) {
            chance *= chances[event];
        }
        return chance;
    }
}
