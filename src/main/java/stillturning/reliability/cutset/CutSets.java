package stillturning.reliability.cutset;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a search has found.
 *
 * @param order the largest sets that were to be asked about
 * @param minimal sets that bring it about of which no part does, by size, then by number
 * @param healings minimal sets smaller than the order that one more event undoes, in the same order
 * @param untold sets for which nobody could say
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

    /** By size, then by number. */
    static final Comparator<List<Integer>> BY_SIZE_THEN_NUMBER =
            Comparator.<List<Integer>>comparingInt(List::size).thenComparing(CutSets::byNumber);

    public CutSets {
        minimal = minimal.stream().map(List::copyOf).toList();
        healings = List.copyOf(healings);
        untold = untold.stream().map(List::copyOf).toList();
    }

    private static int byNumber(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            int way = one.get(i).compareTo(other.get(i));
            if (way != 0) {
                return way;
            }
        }
        return 0;
    }

    /**
     * The minimal sets, and those for which nobody could say unless a part of them brings it about
     * or cannot be told either; in the same order.
     */
    public List<List<Integer>> feared() {
        return Stream.concat(minimal.stream(), doubted().stream())
                .sorted(BY_SIZE_THEN_NUMBER)
                .toList();
    }

    /** The sets among the feared for which nobody could say. */
    public List<List<Integer>> doubted() {
        Set<Set<Integer>> known = new HashSet<>();
        minimal.forEach(set -> known.add(Set.copyOf(set)));
        untold.forEach(set -> known.add(Set.copyOf(set)));
        return untold.stream().filter(set -> properParts(set).noneMatch(known::contains)).toList();
    }

    private static Stream<Set<Integer>> properParts(List<Integer> set) {
        return IntStream.range(1, (1 << set.size()) - 1)
                .mapToObj(
                        part ->
                                IntStream.range(0, set.size())
                                        .filter(i -> (part & 1 << i) != 0)
                                        .mapToObj(set::get)
                                        .collect(Collectors.toSet()));
    }

    /** Feared sets of one size. */
    public List<List<Integer>> ofOrder(int size) {
        return feared().stream().filter(set -> set.size() == size).toList();
    }
}
