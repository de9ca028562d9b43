package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Graphs whose cut points, bridges and connectivities are known.
 *
 * <p>Values computed for the project's reference by other code, unless said otherwise; those of
 * Petersen, K5, K3,3 and the cubes also from memory, unverified.
 */
class PublishedGraphsTest {

    static Stream<Arguments> graphs() {
        return Stream.of(
                Arguments.of(PublishedGraph.karateClub(), Set.of(0), "0-11", 1, 1),
                Arguments.of(PublishedGraph.kite(), Set.of(7, 8), "7-8 8-9", 1, 1),
                Arguments.of(PublishedGraph.petersen(), Set.of(), "", 3, 3),
                Arguments.of(PublishedGraph.complete(5), Set.of(), "", 4, 4),
                Arguments.of(PublishedGraph.utilities(), Set.of(), "", 3, 3),
                Arguments.of(PublishedGraph.cube(3), Set.of(), "", 3, 3),
                Arguments.of(PublishedGraph.cube(4), Set.of(), "", 4, 4),
                Arguments.of(PublishedGraph.cycle(6), Set.of(), "", 2, 2),
                Arguments.of(PublishedGraph.path(4), Set.of(1, 2), "0-1 1-2 2-3", 1, 1),
                Arguments.of(PublishedGraph.twoQuartets(), Set.of(3, 4, 5), "3-4 4-5", 1, 1),
                Arguments.of(PublishedGraph.dodecahedron(), Set.of(), "", 3, 3),
                Arguments.of(PublishedGraph.icosahedron(), Set.of(), "", 5, 5),
                Arguments.of(PublishedGraph.heawood(), Set.of(), "", 3, 3),
                Arguments.of(PublishedGraph.frucht(), Set.of(), "", 3, 3));
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void partsThatEveryWayPassesAreTheCutPointsAndBridges(
            PublishedGraph graph, Set<Integer> cutPoints, String bridges) {
        assertEquals(cutPoints, sharedByAnyPair(graph, graph.verticesAreParts()));
        String found =
                sharedByAnyPair(graph, graph.edgesAreParts()).stream()
                        .map(e -> graph.edges().get(e)[0] + "-" + graph.edges().get(e)[1])
                        .collect(Collectors.joining(" "));
        assertEquals(bridges, found);
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void anotherLibrarysCutPointsAndBridgesAgree(PublishedGraph graph) {
        Graph<Integer, DefaultEdge> theirs = new SimpleGraph<>(DefaultEdge.class);
        IntStream.range(0, graph.size()).forEach(theirs::addVertex);
        graph.edges().forEach(e -> theirs.addEdge(e[0], e[1]));
        BiconnectivityInspector<Integer, DefaultEdge> inspector =
                new BiconnectivityInspector<>(theirs);
        assertEquals(inspector.getCutpoints(), sharedByAnyPair(graph, graph.verticesAreParts()));
        assertEquals(
                inspector.getBridges().size(),
                sharedByAnyPair(graph, graph.edgesAreParts()).size());
    }

    /** Vertices and edges of the larger ones, as in the project's reference. */
    @Test
    void theLargerGraphsHaveTheirEdges() {
        assertEquals(30, PublishedGraph.dodecahedron().edges().size());
        assertEquals(30, PublishedGraph.icosahedron().edges().size());
        assertEquals(21, PublishedGraph.heawood().edges().size());
        assertEquals(18, PublishedGraph.frucht().edges().size());
    }

    /** Whitney: vertex connectivity <= edge connectivity <= least degree (from memory). */
    @ParameterizedTest
    @MethodSource("graphs")
    void smallestCutOfAnyPairIsTheConnectivity(
            PublishedGraph graph, Set<Integer> cutPoints, String bridges, int kappa, int lambda) {
        Separator byVertex = new Separator(graph.verticesAreParts());
        Separator byEdge = new Separator(graph.edgesAreParts());
        int fewestVertices = graph.size() - 1;
        int fewestEdges = Integer.MAX_VALUE;
        for (int[] pair : pairs(graph)) {
            fewestEdges = Math.min(fewestEdges, byEdge.between(pair[0], pair[1]).cut().size());
            if (!graph.areJoined(pair[0], pair[1])) {
                int cut = byVertex.between(pair[0], pair[1]).cut().size();
                fewestVertices = Math.min(fewestVertices, cut);
            }
        }
        assertEquals(kappa, fewestVertices, "vertex connectivity of " + graph);
        assertEquals(lambda, fewestEdges, "edge connectivity of " + graph);
        assertTrue(kappa <= lambda && cutPoints.isEmpty() == kappa > 1, bridges);
    }

    /** Zachary's karate club, members 1 and 34: computed from the public copy of the data. */
    @Test
    void karateClubsLeadersAreJoinedByTenEdgeDisjointAndSixVertexDisjointWays() {
        PublishedGraph club = PublishedGraph.karateClub();
        assertEquals(10, new Separator(club.edgesAreParts()).between(0, 33).ways().size());
        PartGraph members = club.verticesAreParts();
        Separation byMember = new Separator(members).between(0, 33);
        assertEquals(6, byMember.ways().size());
        assertEquals(6, byMember.cut().size());
        assertTrue(members.way(0, 33, bits(byMember.cut())).isEmpty());
        assertTrue(members.way(0, 33, bits(List.of(2, 8, 13, 19, 30, 31))).isEmpty());
    }

    @Test
    void joinedEndsHaveNoPartBetween() {
        PartGraph graph = PublishedGraph.complete(5).verticesAreParts();
        assertEquals(Separation.ONE_JOINT, new Separator(graph).between(0, 1));
    }

    static Stream<Arguments> twoTerminalNetworks() {
        return Stream.of(
                Arguments.of(PublishedGraph.bridge(), 0, 3, "{2=2, 3=2}"),
                Arguments.of(PublishedGraph.complete(4), 0, 1, "{3=2, 4=2}"),
                Arguments.of(PublishedGraph.complete(5), 0, 1, "{4=2, 6=6}"),
                Arguments.of(PublishedGraph.ladder(), 0, 5, "{2=3, 3=4, 4=2}"),
                Arguments.of(PublishedGraph.grid(), 0, 8, "{2=2, 3=8, 4=12, 5=8}"),
                Arguments.of(PublishedGraph.petersen(), 0, 1, "{3=2, 4=4, 5=12, 6=28, 7=28}"));
    }

    /**
     * Number of minimal edge cuts by size. The bridge's cuts after Barlow and Proschan (1975), from
     * memory; all counts computed for the project's reference by other code.
     */
    @ParameterizedTest
    @MethodSource("twoTerminalNetworks")
    void minimalCutsAreAsManyAsCountedElsewhere(
            PublishedGraph graph, int from, int to, String expected) {
        PartGraph edges = graph.edgesAreParts();
        boolean[] separates = new boolean[1 << graph.edges().size()];
        for (int set = 0; set < separates.length; set++) {
            separates[set] = edges.way(from, to, BitSet.valueOf(new long[] {set})).isEmpty();
        }
        int least = new Separator(edges).between(from, to).cut().size();
        var bySize =
                IntStream.range(0, separates.length)
                        .filter(set -> separates[set] && isMinimal(set, separates))
                        .boxed()
                        .collect(
                                Collectors.groupingBy(
                                        Integer::bitCount, TreeMap::new, Collectors.counting()));
        assertEquals(expected, bySize.toString());
        assertEquals(bySize.firstKey(), least);
    }

    private static boolean isMinimal(int set, boolean[] separates) {
        return IntStream.range(0, 31)
                .filter(bit -> (set & 1 << bit) != 0)
                .noneMatch(bit -> separates[set & ~(1 << bit)]);
    }

    private static Set<Integer> sharedByAnyPair(PublishedGraph graph, PartGraph parts) {
        Separator separator = new Separator(parts);
        Set<Integer> shared = new TreeSet<>();
        for (int[] pair : pairs(graph)) {
            shared.addAll(separator.between(pair[0], pair[1]).shared());
        }
        return shared;
    }

    private static List<int[]> pairs(PublishedGraph graph) {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < graph.size(); i++) {
            for (int j = i + 1; j < graph.size(); j++) {
                pairs.add(new int[] {i, j});
            }
        }
        return pairs;
    }

    private static BitSet bits(List<Integer> parts) {
        BitSet bits = new BitSet();
        parts.forEach(bits::set);
        return bits;
    }
}
