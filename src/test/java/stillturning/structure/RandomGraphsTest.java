package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ways and cuts against plain enumeration of every way and every set of parts. */
class RandomGraphsTest {

    private static final int PARTS = 7;
    private static final int VERTICES = 12;

    static IntStream seeds() {
        return IntStream.range(0, 600);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void waysAndCutsAreThoseOfEnumeration(int seed) {
        PartGraph graph = randomGraph(new SplittableRandom(seed));
        Separation found = new Separator(graph).between(0, 1);
        Set<BitSet> ways = new HashSet<>();
        enumerate(graph, new ArrayList<>(List.of(0)), ways);

        String seedSaid = "seed " + seed + ": " + found + " against " + ways;
        assertTrue(found.proven(), seedSaid);
        if (ways.isEmpty()) {
            assertEquals(Separation.APART, found, seedSaid);
        } else if (ways.contains(new BitSet())) {
            assertEquals(Separation.ONE_JOINT, found, seedSaid);
        } else {
            assertEquals(smallestCut(ways), found.cut().size(), seedSaid);
            assertTrue(hitsAll(bits(found.cut()), ways), seedSaid);
            assertEquals(
                    mostApart(new ArrayList<>(ways), 0, new BitSet()),
                    found.ways().size(),
                    seedSaid);
            assertApartAndReal(found, ways, seedSaid);
            assertEquals(common(ways), bits(found.shared()), seedSaid);
            assertTrue(found.ways().size() <= found.cut().size(), seedSaid);
        }
    }

    /**
     * Three connectors, each way through two of them: Menger's equality does not hold for parts
     * that carry several ways.
     */
    @Test
    void threeWaysOfWhichAnyTwoShareAConnectorAreOneIndependentWayButNeedTwoCuts() {
        PartGraph.Builder builder = new PartGraph.Builder();
        int from = builder.vertex();
        int to = builder.vertex();
        for (int[] pair : new int[][] {{0, 1}, {1, 2}, {2, 0}}) {
            int first = builder.vertex(pair[0]);
            int second = builder.vertex(pair[1]);
            builder.arc(from, first);
            builder.arc(first, second);
            builder.arc(second, to);
        }
        Separation found = new Separator(builder.build()).between(from, to);
        assertEquals(1, found.ways().size());
        assertEquals(2, found.cut().size());
        assertEquals(List.of(), found.shared());
        assertTrue(found.proven());
    }

    @Test
    void aWayThatStartsOnALeverKeepsTheLeverWhereItStands() {
        PartGraph.Builder builder = new PartGraph.Builder();
        int up = builder.vertexAt(1, 0);
        int down = builder.vertexAt(2, 0);
        int to = builder.vertex();
        builder.arc(up, down);
        builder.arc(down, to);
        PartGraph graph = builder.build();
        assertTrue(graph.way(up, to, new BitSet()).isEmpty());
        assertTrue(graph.way(down, to, new BitSet()).isPresent());
    }

    /** Otherwise the comparison above would leave the search untouched. */
    @Test
    void theRandomGraphsNeedTheSearchAndBreakMengersEquality() {
        int several = 0;
        int unequal = 0;
        for (int seed : seeds().toArray()) {
            PartGraph graph = randomGraph(new SplittableRandom(seed));
            Separation found = new Separator(graph).between(0, 1);
            several += found.cut().size() > 1 ? 1 : 0;
            unequal += found.ways().size() < found.cut().size() ? 1 : 0;
        }
        assertTrue(several > 100 && unequal > 2, several + " " + unequal);
    }

    private static PartGraph randomGraph(SplittableRandom random) {
        PartGraph.Builder builder = new PartGraph.Builder();
        builder.vertex();
        builder.vertex();
        int levers = random.nextInt(3);
        for (int v = 2; v < VERTICES; v++) {
            int part = random.nextInt(PARTS);
            if (part < levers) {
                builder.vertexAt(1 + random.nextInt(3), part);
            } else if (random.nextInt(8) == 0) {
                builder.vertex();
            } else if (random.nextInt(6) == 0) {
                builder.vertex(
                        levers + random.nextInt(PARTS - levers),
                        levers + random.nextInt(PARTS - levers));
            } else {
                builder.vertex(part);
            }
        }
        int arcs = 16 + random.nextInt(24);
        for (int i = 0; i < arcs; i++) {
            int one = random.nextInt(VERTICES);
            int other = random.nextInt(VERTICES);
            if (random.nextBoolean()) {
                builder.edge(one, other);
            } else {
                builder.arc(one, other);
            }
        }
        return builder.build();
    }

    private static void enumerate(PartGraph graph, List<Integer> way, Set<BitSet> ways) {
        int[] vertices = way.stream().mapToInt(v -> v).toArray();
        if (!graph.isPossible(vertices)) {
            return;
        }
        int end = vertices[vertices.length - 1];
        if (end == 1) {
            ways.add(bits(graph.partsOn(vertices)));
            return;
        }
        for (int v : graph.next(end)) {
            if (!way.contains(v)) {
                way.add(v);
                enumerate(graph, way, ways);
                way.remove(way.size() - 1);
            }
        }
    }

    private static int smallestCut(Set<BitSet> ways) {
        return IntStream.range(0, 1 << PARTS)
                .filter(set -> hitsAll(BitSet.valueOf(new long[] {set}), ways))
                .map(Integer::bitCount)
                .min()
                .orElseThrow();
    }

    private static boolean hitsAll(BitSet cut, Set<BitSet> ways) {
        return ways.stream().allMatch(cut::intersects);
    }

    private static int mostApart(List<BitSet> ways, int at, BitSet used) {
        if (at == ways.size()) {
            return 0;
        }
        int without = mostApart(ways, at + 1, used);
        if (ways.get(at).intersects(used)) {
            return without;
        }
        BitSet more = (BitSet) used.clone();
        more.or(ways.get(at));
        return Math.max(without, 1 + mostApart(ways, at + 1, more));
    }

    private static void assertApartAndReal(Separation found, Set<BitSet> ways, String message) {
        BitSet used = new BitSet();
        for (List<Integer> way : found.ways()) {
            BitSet parts = bits(way);
            assertTrue(!parts.intersects(used), message);
            used.or(parts);
            assertTrue(ways.contains(parts), message);
        }
    }

    private static BitSet common(Set<BitSet> ways) {
        BitSet common = new BitSet();
        common.set(0, PARTS);
        ways.forEach(common::and);
        return common;
    }

    private static BitSet bits(List<Integer> parts) {
        BitSet bits = new BitSet();
        parts.forEach(bits::set);
        return bits;
    }
}
