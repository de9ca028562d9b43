package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Exhaustive search for independent ways and smallest cuts between two vertices, where parts with
 * several vertices make the question harder than a flow.
 */
final class WaySearch {

    /** Ways looked for before the search gives up. */
    private static final int PATIENCE = 50_000;

    private final PartGraph graph;
    private final int from;
    private final int to;
    private List<List<Integer>> best = List.of();
    private int tries;

    WaySearch(PartGraph graph, int from, int to) {
        this.graph = graph;
        this.from = from;
        this.to = to;
    }

    /** Whether nothing was left untried. */
    boolean finished() {
        return tries < PATIENCE;
    }

    /** The fewest parts that separate the ends, at least two; the known cut if none is smaller. */
    List<Integer> fewestParts(List<Integer> knownCut) {
        for (int size = 2; size < knownCut.size(); size++) {
            List<Integer> cut = new ArrayList<>();
            if (separates(size, new BitSet(), cut)) {
                return List.copyOf(cut);
            }
        }
        return knownCut;
    }

    /**
     * The most ways of which no two share a part, as parts.
     *
     * @param known one way
     * @param bound how many there are at most
     */
    List<List<Integer>> mostWays(int[] known, int bound) {
        best = List.of(graph.partsOn(known));
        int count = bound;
        while (count > best.size() && !fits(count, new BitSet(), new ArrayList<>())) {
            count--;
        }
        return best;
    }

    /** Some part of any way must be in a cut: tries each. */
    private boolean separates(int left, BitSet gone, List<Integer> cut) {
        Optional<int[]> way = anyWay(gone);
        if (way.isEmpty()) {
            return finished();
        }
        if (left == 0) {
            return false;
        }
        for (int part : graph.partsOn(way.get())) {
            gone.set(part);
            cut.add(part);
            if (separates(left - 1, gone, cut)) {
                return true;
            }
            gone.clear(part);
            cut.remove(cut.size() - 1);
        }
        return false;
    }

    private boolean fits(int count, BitSet gone, List<List<Integer>> ways) {
        if (ways.size() > best.size()) {
            best = List.copyOf(ways);
        }
        if (count == 0) {
            return true;
        }
        return anyWay(gone).isPresent() && anyOf(gone, way -> fitsBeside(way, count, gone, ways));
    }

    private boolean fitsBeside(int[] way, int count, BitSet gone, List<List<Integer>> ways) {
        List<Integer> parts = graph.partsOn(way);
        BitSet more = (BitSet) gone.clone();
        parts.forEach(more::set);
        ways.add(parts);
        boolean fits = fits(count - 1, more, ways);
        ways.remove(ways.size() - 1);
        return fits;
    }

    private Optional<int[]> anyWay(BitSet gone) {
        tries++;
        return finished() ? graph.way(from, to, gone) : Optional.empty();
    }

    /** Walks every possible way without a vertex twice until one is accepted. */
    private boolean anyOf(BitSet gone, Predicate<int[]> accepts) {
        BitSet closed = graph.verticesOf(gone);
        List<Integer> way = new ArrayList<>(List.of(from));
        List<Integer> branch = new ArrayList<>(List.of(0));
        closed.set(from);
        while (!way.isEmpty()) {
            int last = way.size() - 1;
            int[] next = graph.next(way.get(last));
            int at = branch.get(last);
            if (at == next.length) {
                closed.clear(way.remove(last));
                branch.remove(last);
                continue;
            }
            branch.set(last, at + 1);
            int[] longer = withEnd(way, next[at]);
            if (next[at] == to) {
                if (accepts.test(longer)) {
                    return true;
                }
            } else if (!closed.get(next[at]) && leadsOn(longer, closed)) {
                way.add(next[at]);
                branch.add(0);
                closed.set(next[at]);
            }
        }
        return false;
    }

    private boolean leadsOn(int[] way, BitSet closed) {
        tries++;
        return finished()
                && graph.isPossible(way)
                && graph.wayAround(way[way.length - 1], to, closed).isPresent();
    }

    private static int[] withEnd(List<Integer> way, int end) {
        int[] longer = new int[way.size() + 1];
        for (int i = 0; i < way.size(); i++) {
            longer[i] = way.get(i);
        }
        longer[way.size()] = end;
        return longer;
    }
}
