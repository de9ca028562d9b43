package stillturning.reliability.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Benchmark networks and k-out-of-n systems; vertices 0 and 1 are the terminals. */
class NetworksTest {
    /** Components 1, 2 at the source, 4 after 1, 5 after 2, 3 across. */
    private static final CutUnion BRIDGE =
            CutUnion.of(
                    5, List.of(List.of(0, 1), List.of(3, 4), List.of(0, 2, 4), List.of(1, 2, 3)));

    /**
     * Five-component bridge (Barlow and Proschan 1975 and others: cuts and polynomials from memory,
     * unverified; .97848 printed in terminal-reliability papers, from memory; the rest computed).
     */
    @ParameterizedTest
    @CsvSource({
        ".1, .02152, .0220, .0218592199, 5e-11",
        ".05, .005219375, .00525, .0052424860, 5e-11",
        ".01, 2.0195020e-4, 2.02e-4, 2.0198960e-4, 5e-12"
    })
    void bridgeHasItsTopAndItsBounds(
            double q, double exact, double rareEvent, double upper, double within) {
        Estimate top = Chance.of(BRIDGE, Cases.even(5, q)).average();
        assertEquals(exact, top.value(), within);
        assertEquals(rareEvent, top.rareEventSum(), 1e-12);
        assertEquals(upper, top.minCutUpperBound(), within);
    }

    @Test
    void bridgeHasItsImportances() {
        List<Importance> all = Chance.importances(BRIDGE, Cases.even(5, .1));
        for (int outer : List.of(0, 1, 3, 4)) {
            assertEquals(.1062, all.get(outer).birnbaum(), 1e-12);
            assertEquals(.493494, all.get(outer).criticality(), 5e-7);
            assertEquals(.5, all.get(outer).fussellVeselySum(), 1e-12);
        }
        assertEquals(.0162, all.get(2).birnbaum(), 1e-12);
        assertEquals(.0752788, all.get(2).criticality(), 5e-8);
        assertEquals(.0909091, all.get(2).fussellVeselySum(), 5e-8);
    }

    @Test
    void bridgeByIntersections() {
        InclusionExclusion found = InclusionExclusion.of(BRIDGE, Cases.even(5, .1), 4);
        double[] sums = {.0220, 5.1e-4, 4e-5, 1e-5};
        double[] partial = {.0220, .02149, .02153, .02152};
        for (int k = 0; k < 4; k++) {
            assertEquals(sums[k], found.sums().get(k), 1e-12);
            assertEquals(partial[k], found.partialSums().get(k), 1e-12);
        }
    }

    /**
     * Units needed of units there, each with R = .9. 3 of 4: .9477 in MIL-HDBK-338B (attribution
     * from memory; read in a second source that does not name it); the others computed.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 4, .9477",
        "2, 3, .972",
        "3, 3, .729",
        "1, 3, .999",
        "2, 4, .9963",
        "1, 4, .9999",
        "3, 5, .99144"
    })
    void neededOfThereWorks(int needed, int there, double works) {
        List<List<Integer>> cuts =
                Cases.minimal(there, failed -> there - Integer.bitCount(failed) < needed);
        assertEquals(
                works, 1 - Cases.average(CutUnion.of(there, cuts), Cases.even(there, .1)), 1e-12);
    }

    @Test
    void consecutiveSystemIsLostOnlyByNeighbours() {
        // Birolini 2007 section 2.2.6 (definition read, terms re-derived)
        CutUnion three =
                CutUnion.of(5, List.of(List.of(0, 1, 2), List.of(1, 2, 3), List.of(2, 3, 4)));
        assertEquals(.9972, 1 - Cases.average(three, Cases.even(5, .1)), 5e-5);
    }

    @Test
    void hotPairOfActiveUnits() {
        // lambda t = .1 each: R = .99094408 (computed)
        CutUnion pair = CutUnion.of(2, List.of(List.of(0, 1)));
        assertEquals(.99094408, 1 - Cases.average(pair, Cases.active(.1), Cases.active(.1)), 5e-9);
    }

    /** Edges fail with .1, vertices never: cuts by trying every set, values computed. */
    @Test
    void twoTerminalNetworksHaveTheirCutsAndReliability() {
        assertNetwork(.97848, Map.of(2, 2, 3, 2), edges("02 03 23 21 31"));
        assertNetwork(.997848, Map.of(3, 2, 4, 2), complete(4));
        assertNetwork(.9997948026, Map.of(4, 2, 6, 6), complete(5));
        assertNetwork(.96697476, Map.of(2, 3, 3, 4, 4, 2), edges("02 03 23 24 35 45 41 51"));
        assertNetwork(
                .9725021714,
                Map.of(2, 2, 3, 8, 4, 12, 5, 8),
                edges("02 23 45 56 78 81 04 47 25 58 36 61"));
        assertNetwork(
                .9975376354,
                Map.of(3, 2, 4, 4, 5, 12, 6, 28, 7, 28),
                edges("01 12 23 34 40 57 79 96 68 85 05 16 27 38 49"));
    }

    private static void assertNetwork(
            double works, Map<Integer, Integer> cutsBySize, int[][] edges) {
        CutUnion cuts = CutUnion.of(edges.length, Cases.edgeCuts(edges));
        assertEquals(cutsBySize, cuts.byOrder());
        assertEquals(works, 1 - Cases.average(cuts, Cases.even(edges.length, .1)), 5e-11);
    }

    private static int[][] edges(String pairs) {
        return List.of(pairs.split(" ")).stream()
                .map(pair -> new int[] {pair.charAt(0) - '0', pair.charAt(1) - '0'})
                .toArray(int[][]::new);
    }

    private static int[][] complete(int vertices) {
        return IntStream.range(0, vertices)
                .boxed()
                .flatMap(a -> IntStream.range(a + 1, vertices).mapToObj(b -> new int[] {a, b}))
                .toArray(int[][]::new);
    }
}
