package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** Nets and branches that are not there are refused by their number, never answered. */
class RefusedQuestionsTest {

    private static final Network TWO_OHMS =
            new Network(
                    3,
                    List.of(
                            new Branch(1, 0, new SourceBehindOhms(12, 1)),
                            new Branch(1, 2, new Resistive(2)),
                            new Branch(2, 0, new Resistive(3))));

    private static void assertRefused(String by, Executable question) {
        String message =
                String.valueOf(assertThrows(IllegalArgumentException.class, question).getMessage());
        assertTrue(message.contains(by), message);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 3})
    void aPointKnowsItsOwnNetsAndBranchesAlone(int outside) throws NoOperatingPoint {
        OperatingPoint point = OperatingPoints.of(TWO_OHMS);
        assertEquals(2, point.amps(1), 1e-9);
        assertEquals(6, point.volts(2), 1e-9);
        assertRefused("net " + outside, () -> point.volts(outside));
        assertRefused("net " + outside, () -> point.floating(outside));
        assertRefused("branch " + outside, () -> point.amps(outside));
    }

    @Test
    void branchesEndInTheNetwork() {
        assertRefused(
                "branch 0 starts at net 3",
                () -> new Network(3, List.of(new Branch(3, 0, new Resistive(1)))));
        assertRefused(
                "branch 0 ends at net 3",
                () -> new Network(3, List.of(new Branch(0, 3, new Resistive(1)))));
        assertRefused("0 nets", () -> new Network(0, List.of()));
    }

    @Test
    void analysedNetsAreTheOnlyOnes() {
        Topology topology = Topology.of(3, new int[] {1, 1}, new int[] {0, 2});
        assertTrue(topology.accommodates(1, 2));
        assertTrue(topology.accommodates(2, 1));
        assertEquals(false, topology.accommodates(1, 1));
        assertRefused("net 3", () -> topology.accommodates(3, 1));
        assertRefused("net 3", () -> topology.accommodates(1, 3));
        assertRefused("ends at net 5", () -> Topology.of(3, new int[] {1, 1}, new int[] {0, 5}));
        assertRefused("starts at net 5", () -> Topology.of(3, new int[] {1, 5}, new int[] {0, 1}));
    }

    @Test
    void startsAreNumbersOneANet() {
        int[] from = {1, 1};
        int[] to = {0, 2};
        NodalSolver solver =
                new NodalSolver(
                        Topology.of(3, from, to),
                        from,
                        to,
                        new BranchLaw[] {new Resistive(1), new Resistive(2)});
        assertRefused("2 voltages for 3 nets", () -> solver.start(new double[2]));
        assertRefused("net 2 starts at NaN", () -> solver.start(new double[] {0, 1, Double.NaN}));
        assertRefused("net 0 starts at NaN", () -> solver.start(new double[] {Double.NaN, 1, 2}));
    }

    @Test
    void equalPointsHaveEqualHashes() throws NoOperatingPoint {
        OperatingPoint one = OperatingPoints.of(TWO_OHMS);
        OperatingPoint same = OperatingPoints.of(TWO_OHMS);
        assertEquals(one, same);
        assertEquals(one.hashCode(), same.hashCode());
        OperatingPoint other =
                OperatingPoints.of(
                        new Network(2, List.of(new Branch(1, 0, new SourceBehindOhms(12, 1)))));
        assertNotEquals(one.hashCode(), other.hashCode());
    }

    @Test
    void aRefusalNamesNetBranchAndWhatIsLeftOver() {
        NoOperatingPoint refusal = new NoOperatingPoint(4, 7, 0.25);
        assertEquals(4, refusal.net());
        assertEquals(7, refusal.branch());
        assertEquals(0.25, refusal.residualAmps());
        String message = String.valueOf(refusal.getMessage());
        assertTrue(message.contains("net 4 are off by 0.250 A"), message);
    }
}
