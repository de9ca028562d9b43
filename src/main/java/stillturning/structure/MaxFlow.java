package stillturning.structure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultDirectedWeightedGraph;
import org.jgrapht.graph.DefaultWeightedEdge;

/**
 * Maximum flow through a part graph, one unit through each vertex that belongs to a part.
 *
 * <p>By Menger's theorem (K. Menger, Fundamenta Mathematicae 10 (1927), from memory) it is as many
 * as the fewest such vertices that separate its ends. Vertices of one part are not tied together
 * here, so it bounds the part-disjoint ways from above, and the cut's parts do separate.
 */
final class MaxFlow {

    /** Flows are whole; what is less is rounding. */
    private static final double HALF = 0.5;

    private final PartGraph parts;
    private final Graph<Integer, DefaultWeightedEdge> split =
            new DefaultDirectedWeightedGraph<>(DefaultWeightedEdge.class);

    /**
     * What one maximum flow shows.
     *
     * @param ways its paths, as vertices
     * @param cut parts that separate the ends, one for each path at most
     */
    record Flow(List<int[]> ways, Set<Integer> cut) {}

    /** Splits every vertex in two, with its capacity between them. */
    MaxFlow(PartGraph parts) {
        this.parts = parts;
        for (int v = 0; v < 2 * parts.size(); v++) {
            split.addVertex(v);
        }
        for (int v = 0; v < parts.size(); v++) {
            arc(entry(v), exit(v), parts.isJoint(v) ? unlimited() : 1);
            for (int to : parts.next(v)) {
                arc(exit(v), entry(to), unlimited());
            }
        }
    }

    /** A maximum flow between two vertices that do not meet without a part between them. */
    Flow between(int from, int to) {
        PushRelabelMFImpl<Integer, DefaultWeightedEdge> flow = new PushRelabelMFImpl<>(split);
        double value = flow.calculateMaximumFlow(exit(from), entry(to));
        List<int[]> ways = new ArrayList<>();
        Map<DefaultWeightedEdge, Double> left = flow.getFlowMap();
        for (int i = 0; i < Math.round(value); i++) {
            ways.add(takeWay(from, to, left));
        }
        return new Flow(ways, cut(flow.getSourcePartition()));
    }

    private Set<Integer> cut(Set<Integer> sourceSide) {
        Set<Integer> cut = new LinkedHashSet<>();
        for (int v = 0; v < parts.size(); v++) {
            if (!parts.isJoint(v)
                    && sourceSide.contains(entry(v))
                    && !sourceSide.contains(exit(v))) {
                cut.add(parts.parts(v)[0]);
            }
        }
        return cut;
    }

    private int[] takeWay(int from, int to, Map<DefaultWeightedEdge, Double> left) {
        List<Integer> way = new ArrayList<>(List.of(exit(from)));
        while (way.get(way.size() - 1) != entry(to)) {
            int at = way.get(way.size() - 1);
            DefaultWeightedEdge taken =
                    split.outgoingEdgesOf(at).stream()
                            .filter(edge -> left.getOrDefault(edge, 0.0) > HALF)
                            .findFirst()
                            .orElseThrow(() -> new IllegalStateException("flow ends at " + at));
            left.merge(taken, -1.0, Double::sum);
            int reached = split.getEdgeTarget(taken);
            int seen = way.indexOf(reached);
            if (seen >= 0) {
                way.subList(seen, way.size()).clear();
            }
            way.add(reached);
        }
        return way.stream().mapToInt(v -> v / 2).distinct().toArray();
    }

    private void arc(int from, int to, double capacity) {
        DefaultWeightedEdge edge = new DefaultWeightedEdge();
        if (split.addEdge(from, to, edge)) {
            split.setEdgeWeight(edge, capacity);
        }
    }

    private double unlimited() {
        return parts.size();
    }

    private static int entry(int vertex) {
        return 2 * vertex;
    }

    private static int exit(int vertex) {
        return 2 * vertex + 1;
    }
}
