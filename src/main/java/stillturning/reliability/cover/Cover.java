package stillturning.reliability.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import stillturning.reliability.cover.CoverChoice.Proof;
import stillturning.reliability.cover.Solver.Budget;
import stillturning.reliability.cover.Solver.Satisfiable;

/** Chooses the cheapest sets that cover every item which can be covered at all. */
public final class Cover {

    /** Conflicts that a search may run into, unless somebody says otherwise. */
    public static final long CONFLICTS = 100_000;

    private Cover() {}

    /** As {@link #of(int, List, long)} with the usual budget. */
    public static CoverChoice of(int items, List<CoverSet> offers) {
        return of(items, offers, CONFLICTS);
    }

    /**
     * The cheapest choice. Among equally cheap ones the one first by the numbers of its sets: of
     * two, that which has the lowest number that the other has not.
     *
     * @param items number of items
     * @param offers the sets to choose from, numbered in this order
     * @param conflicts that the search may run into, at least 0; then the best so far is the answer
     * @throws IllegalArgumentException if an offer names an item that does not exist
     */
    public static CoverChoice of(int items, List<CoverSet> offers, long conflicts) {
        BitSet coverable = coverable(items, offers);
        Reduced reduced = new Reduced(coverable, offers);
        List<Integer> open = reduced.open();
        List<List<Integer>> needs =
                reduced.needs().stream()
                        .map(need -> need.stream().map(open::indexOf).toList())
                        .toList();
        CoverSearch search =
                new CoverSearch(
                        open.stream().map(set -> offers.get(set).cost()).toList(),
                        needs,
                        new Budget(conflicts));
        BitSet chosen = reduced.forced();
        long forcedCost = chosen.stream().mapToLong(set -> offers.get(set).cost()).sum();
        search.chosen().forEach(set -> chosen.set(open.get(set)));
        return new CoverChoice(
                chosen.stream().boxed().toList(),
                forcedCost + search.cost(),
                forcedCost + search.lowerBound(),
                search.proof(),
                IntStream.range(0, items).filter(i -> !coverable.get(i)).boxed().toList());
    }

    /**
     * Every cheapest choice, as many as a limit allows.
     *
     * @param limit of choices to find, at least 1
     * @param conflicts that the search may run into
     * @throws IllegalArgumentException if an offer names an item that does not exist, or the limit
     *     is below 1
     */
    public static EquallyCheap all(int items, List<CoverSet> offers, int limit, long conflicts) {
        if (limit < 1) {
            throw new IllegalArgumentException("a limit of " + limit + " choices is none");
        }
        CoverChoice first = of(items, offers, conflicts);
        if (first.proof() == Proof.NONE) {
            return new EquallyCheap(List.of(first.chosen()), false);
        }
        Solver solver = new Solver(offers.size(), needs(items, offers), new Budget(conflicts));
        solver.atMost(first.cost(), offers.stream().map(CoverSet::cost).toList());
        List<List<Integer>> choices = new ArrayList<>(List.of(first.chosen()));
        solver.block(first.chosen());
        Satisfiable answer = solver.ask(List.of());
        while (answer == Satisfiable.YES && choices.size() < limit) {
            choices.add(solver.found());
            solver.block(solver.found());
            answer = solver.ask(List.of());
        }
        choices.sort(Cover::byNumbers);
        return new EquallyCheap(choices, answer == Satisfiable.NO);
    }

    private static int byNumbers(List<Integer> one, List<Integer> other) {
        return Arrays.compare(one.toArray(Integer[]::new), other.toArray(Integer[]::new));
    }

    private static List<List<Integer>> needs(int items, List<CoverSet> offers) {
        return IntStream.range(0, items)
                .mapToObj(
                        item ->
                                IntStream.range(0, offers.size())
                                        .filter(set -> offers.get(set).items().contains(item))
                                        .boxed()
                                        .toList())
                .filter(need -> !need.isEmpty())
                .toList();
    }

    private static BitSet coverable(int items, List<CoverSet> offers) {
        BitSet coverable = new BitSet();
        for (int set = 0; set < offers.size(); set++) {
            for (int item : offers.get(set).items()) {
                if (item < 0 || item >= items) {
                    throw new IllegalArgumentException(
                            "set %d covers item %d, and there are %d".formatted(set, item, items));
                }
                coverable.set(item);
            }
        }
        return coverable;
    }
}
