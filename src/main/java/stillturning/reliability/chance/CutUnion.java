package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Minimal cut sets, made ready to be asked for probabilities again and again. Sets that repeat, or
 * contain another, say nothing new: they are absorbed and counted.
 */
public final class CutUnion {

    /** Nodes of the diagram, unless somebody says otherwise. */
    public static final int NODE_LIMIT = 300_000;

    private final int events;
    private final int nodeLimit;
    private final List<int[]> sets;
    private final int absorbed;
    private final CutSetSums sums;
    private final Optional<DecisionDiagram> diagram;

    private CutUnion(int events, int nodeLimit, List<int[]> given) {
        this.events = events;
        this.nodeLimit = nodeLimit;
        sets = minimal(given, events);
        absorbed = given.size() - sets.size();
        sums = new CutSetSums(sets);
        diagram = diagram(sets);
    }

    /** As {@link #of(int, List, int)} with the usual limit. */
    public static CutUnion of(int events, List<List<Integer>> sets) {
        return of(events, sets, NODE_LIMIT);
    }

    /**
     * The cut sets, with their decision diagram if it stays within the limit.
     *
     * @param events number of events; they are numbered from 0
     * @param sets in any order, each of at least one event; none at all never come true
     * @param nodeLimit most nodes that growing the diagram may take, 0 to 4,194,304
     * @throws IllegalArgumentException if a set is empty or names an event that does not exist, or
     *     there are more than 1,048,576 events
     */
    public static CutUnion of(int events, List<List<Integer>> sets, int nodeLimit) {
        if (events < 0 || events > DecisionDiagramBuilder.MOST_EVENTS) {
            throw new IllegalArgumentException(events + " events are too few or too many");
        }
        if (nodeLimit < 0 || nodeLimit > DecisionDiagramBuilder.MOST_NODES) {
            throw new IllegalArgumentException("a limit of " + nodeLimit + " nodes is none");
        }
        List<int[]> sorted = new ArrayList<>();
        for (List<Integer> set : sets) {
            int[] distinct = set.stream().mapToInt(e -> e).sorted().distinct().toArray();
            if (distinct.length == 0) {
                throw new IllegalArgumentException(
                        "cut set " + sorted.size() + " is empty: it would always be true");
            }
            if (distinct[0] < 0 || distinct[distinct.length - 1] >= events) {
                throw new IllegalArgumentException(
                        "cut set %s names an event outside 0 to %d".formatted(set, events - 1));
            }
            sorted.add(distinct);
        }
        return new CutUnion(events, nodeLimit, sorted);
    }

    /** Number of events. */
    public int events() {
        return events;
    }

    /** The minimal ones, the smallest first, then by their events. */
    public List<List<Integer>> sets() {
        return sets.stream().map(set -> IntStream.of(set).boxed().toList()).toList();
    }

    /** Number of minimal cut sets by the number of their events. */
    public SortedMap<Integer, Integer> byOrder() {
        SortedMap<Integer, Integer> byOrder = new TreeMap<>();
        sets.forEach(set -> byOrder.merge(set.length, 1, Integer::sum));
        return byOrder;
    }

    /** How many of the given sets repeated or contained another. */
    public int absorbed() {
        return absorbed;
    }

    /** Whether probabilities will be exact. */
    public Basis basis() {
        return diagram.isPresent() ? Basis.EXACT : Basis.BOUNDED;
    }

    /** Nodes of the diagram; 0 without one. */
    public int nodes() {
        return diagram.map(DecisionDiagram::nodes).orElse(0);
    }

    Top top() {
        return diagram.isPresent() ? diagram.get() : sums;
    }

    CutSetSums sums() {
        return sums;
    }

    int size() {
        return sets.size();
    }

    int highestOrder() {
        return sets.stream().mapToInt(set -> set.length).max().orElse(0);
    }

    /** The diagram of those sets alone that have any of the marked events. */
    Optional<DecisionDiagram> touching(boolean[] marked) {
        return diagram(sets.stream().filter(set -> CutSetSums.touches(set, marked)).toList());
    }

    private Optional<DecisionDiagram> diagram(List<int[]> some) {
        return some.isEmpty()
                ? Optional.of(DecisionDiagram.NEVER)
                : DecisionDiagramBuilder.of(some, nodeLimit);
    }

    /** Smaller sets come first, so only what is kept already can be contained in the next. */
    private static List<int[]> minimal(List<int[]> given, int events) {
        List<int[]> bySize = new ArrayList<>(given);
        bySize.sort(
                Comparator.comparingInt((int[] set) -> set.length).thenComparing(Arrays::compare));
        List<List<int[]>> keptByFirst = new ArrayList<>();
        for (int event = 0; event < events; event++) {
            keptByFirst.add(new ArrayList<>(0));
        }
        List<int[]> kept = new ArrayList<>();
        for (int[] set : bySize) {
            boolean contains =
                    IntStream.of(set)
                            .anyMatch(
                                    first ->
                                            keptByFirst.get(first).stream()
                                                    .anyMatch(small -> within(small, set)));
            if (!contains) {
                kept.add(set);
                keptByFirst.get(set[0]).add(set);
            }
        }
        return List.copyOf(kept);
    }

    private static boolean within(int[] small, int[] large) {
        return IntStream.of(small).allMatch(event -> Arrays.binarySearch(large, event) >= 0);
    }
}
