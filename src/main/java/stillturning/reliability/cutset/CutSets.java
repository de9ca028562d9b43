package stillturning.reliability.cutset;

import java.util.List;

/**
 * What a search has found.
 *
 * @param order the largest sets that were to be asked about
 * @param minimal sets that bring it about of which no part does, by size, then by number
 * @param healings minimal sets smaller than the order that one more event undoes, in the same order
 * @param untold sets for which nobody could say, so that they may be missing among the minimal
 * @param asked how many sets were asked about
 * @param complete whether every set was reached; false only if the search was called off
 */
public record CutSets(
        int order,
        List<List<Integer>> minimal,
        List<Healing> healings,
        List<List<Integer>> untold,
        long asked,
        boolean complete) {
    public CutSets {
        minimal = minimal.stream().map(List::copyOf).toList();
        healings = List.copyOf(healings);
        untold = untold.stream().map(List::copyOf).toList();
    }

    /** Minimal sets of one size. */
    public List<List<Integer>> ofOrder(int size) {
        return minimal.stream().filter(set -> set.size() == size).toList();
    }
}
