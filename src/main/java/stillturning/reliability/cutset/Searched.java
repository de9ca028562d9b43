package stillturning.reliability.cutset;

import java.util.List;

/**
 * What one block of the work has found.
 *
 * @param cuts minimal sets, each in rising order
 * @param healings sets that one more event undoes
 * @param untold sets for which nobody could say
 * @param asked how many sets were asked about
 */
public record Searched(
        SearchBlock block,
        List<List<Integer>> cuts,
        List<Healing> healings,
        List<List<Integer>> untold,
        long asked) {
    public Searched {
        cuts = cuts.stream().map(List::copyOf).toList();
        healings = List.copyOf(healings);
        untold = untold.stream().map(List::copyOf).toList();
    }
}
