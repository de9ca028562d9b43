package stillturning.structure;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Independent ways and smallest cuts of a part graph.
 *
 * <p>A part that every way passes settles it; else a flow does, almost always. A flow cannot see
 * that two pins are one connector, nor that a lever stands in one place only; where its ways share
 * a part so, an exhaustive search decides.
 */
final class Separator {

    private final PartGraph graph;
    private final MaxFlow flow;

    Separator(PartGraph graph) {
        this.graph = graph;
        this.flow = new MaxFlow(graph);
    }

    Separation between(int from, int to) {
        Optional<int[]> way = graph.way(from, to, new BitSet());
        if (way.isEmpty()) {
            return Separation.APART;
        }
        if (graph.way(from, to, graph.allParts()).isPresent()) {
            return Separation.ONE_JOINT;
        }
        List<Integer> shared = shared(from, to, way.get());
        if (!shared.isEmpty()) {
            List<List<Integer>> only = List.of(graph.partsOn(way.get()));
            return new Separation(only, shared.subList(0, 1), shared, true);
        }
        MaxFlow.Flow found = flow.between(from, to);
        List<Integer> cut = List.copyOf(found.cut());
        return areIndependent(found.ways())
                ? new Separation(
                        found.ways().stream().map(graph::partsOn).toList(), cut, shared, true)
                : searched(from, to, way.get(), cut);
    }

    private Separation searched(int from, int to, int[] way, List<Integer> knownCut) {
        WaySearch search = new WaySearch(graph, from, to);
        List<Integer> cut = search.fewestParts(knownCut);
        List<List<Integer>> ways = search.mostWays(way, cut.size());
        boolean proven = search.finished() || ways.size() == cut.size();
        return new Separation(ways, cut, List.of(), proven);
    }

    /** Parts that every way passes: no other can be, than those on any one way. */
    private List<Integer> shared(int from, int to, int[] way) {
        return graph.partsOn(way).stream()
                .filter(part -> graph.way(from, to, only(part)).isEmpty())
                .toList();
    }

    private boolean areIndependent(List<int[]> ways) {
        Set<Integer> used = new HashSet<>();
        return ways.stream()
                .allMatch(
                        way ->
                                graph.isPossible(way)
                                        && graph.partsOn(way).stream().allMatch(used::add));
    }

    private static BitSet only(int part) {
        BitSet gone = new BitSet();
        gone.set(part);
        return gone;
    }
}
