package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.network.Laws.branch;
import static stillturning.network.Laws.network;
import static stillturning.network.Laws.solved;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ChargeOnly;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.LimitedConductor;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** Networks that break solvers, and values that must not get in. */
class HostileNetworksTest {

    @Test
    void aShortAcrossANearlyIdealBattery() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                2,
                                branch(1, 0, new SourceBehindOhms(12.8, 1e-4)),
                                branch(1, 0, new Resistive(1e-4)),
                                branch(1, 0, new ConstantPower(60.0, 8.0))));
        assertEquals(6.4, point.volts(1), 0.01);
        assertEquals(64_000.0, point.amps(1), 100.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-3, 1.0, 1e3, 1e6})
    void conductancesAMillionTimesApart(double ohms) throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                4,
                                branch(1, 0, new SourceBehindOhms(12.0, 1e-6)),
                                branch(1, 2, new Resistive(ohms)),
                                branch(2, 3, new Resistive(1e-6)),
                                branch(3, 0, new Resistive(1e6))));
        double amps = 12.0 / (2e-6 + ohms + 1e6);
        assertEquals(1e6 * amps, point.volts(3), 1e-8);
    }

    @Test
    void allBranchesOpen() throws NoOperatingPoint {
        OperatingPoint point =
                solved(network(3, branch(1, 0, Open.CIRCUIT), branch(1, 2, Open.CIRCUIT)));
        assertTrue(point.floating(1) && point.floating(2));
        assertFalse(point.floating(0));
        assertEquals(0.0, point.volts(2));
    }

    @Test
    void noBranchAndNoNetButTheReference() throws NoOperatingPoint {
        assertEquals(0.0, solved(network(1)).volts(0));
        assertTrue(solved(network(2)).floating(1));
    }

    @Test
    void aSourceWithNothingToFeed() throws NoOperatingPoint {
        OperatingPoint point = solved(network(3, branch(2, 1, new SourceBehindOhms(12.0, 0.1))));
        assertEquals(0.0, point.volts(1), 1e-9);
        assertEquals(12.0, point.volts(2), 1e-9);
        assertEquals(0.0, point.amps(0), 1e-9);
    }

    @Test
    void aBackwardsDiodeIslandIsDead() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(12.0, 0.1)),
                                branch(2, 1, new DiodeDrop(1e-9, 0.04, 0.01)),
                                branch(2, 0, new ConstantPower(20.0, 8.0))));
        // saturation current and 1 µS of leak into 3.2 ohm
        assertEquals(0.0, point.volts(2), 1e-4);
    }

    @Test
    void loadsWithoutAnySourceRestAtNothing() throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new ConstantCurrent(5.0, 8.0)),
                                branch(1, 2, new Resistive(0.01)),
                                branch(2, 0, new ConstantPower(50.0, 8.0))));
        assertEquals(0.0, point.volts(1), 1e-12);
    }

    @Test
    void aWarmSolverFindsItsSourceGone() throws NoOperatingPoint {
        int[] from = {1, 1, 2};
        int[] to = {0, 2, 0};
        BranchLaw[] laws = {
            new SourceBehindOhms(12.0, 0.1), new Resistive(0.1), new ConstantCurrent(4.0, 8.0)
        };
        NodalSolver solver = new NodalSolver(Topology.of(3, from, to), from, to, laws);
        solver.solve();
        assertEquals(11.2, solver.volts(2), 1e-9);
        solver.law(0, Open.CIRCUIT);
        solver.solve();
        assertEquals(0.0, solver.volts(2), 1e-9);
        solver.law(0, laws[0]);
        solver.solve();
        assertEquals(11.2, solver.volts(2), 1e-9);
    }

    /** A cross-tie that lets a converter feed its own input: the coupling no longer is small. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.01, 0.1, 1.0})
    void aConverterOnItsOwnInput(double tieOhms) throws NoOperatingPoint {
        solved(
                network(
                        4,
                        branch(1, 0, new SourceBehindOhms(12.8, 0.02)),
                        branch(1, 2, new Resistive(0.005)),
                        branch(2, 0, new ConverterInput(3, 0.9, 1.0, 8.0)),
                        branch(3, 0, new LimitedSource(13.8, 0.01, 20.0)),
                        branch(3, 2, new Resistive(tieOhms)),
                        branch(3, 0, new Resistive(3.0))));
    }

    /**
     * Just beyond the most that a channel passes: the solver must cross where a point almost is.
     */
    @ParameterizedTest
    @ValueSource(doubles = {30.0, 29.99, 29.9, 31.0, 45.0})
    void aLoadAtTheEdgeOfItsChannel(double watts) throws NoOperatingPoint {
        OperatingPoint point =
                solved(
                        network(
                                3,
                                branch(1, 0, new SourceBehindOhms(10.0, 1e-6)),
                                branch(1, 2, new LimitedConductor(1e-6, 3.0)),
                                branch(2, 0, new ConstantPower(watts, 6.0))));
        if (watts < 30.0) {
            assertEquals(10.0, point.volts(2), 1e-3);
        } else if (watts > 30.0) {
            assertEquals(3.0 * 36.0 / watts, point.volts(2), 1e-6);
        }
    }

    @Test
    void aChainOfAHundredThousandNets() {
        int nets = 100_000;
        List<Branch> branches = new ArrayList<>();
        branches.add(branch(1, 0, new SourceBehindOhms(12.0, 1.0)));
        for (int net = 2; net < nets; net++) {
            branches.add(branch(net - 1, net, new Resistive(0.001)));
        }
        branches.add(branch(nets - 1, 0, new Resistive(100.0)));
        Network chain = new Network(nets, branches);
        assertTimeout(
                Duration.ofSeconds(20),
                () -> {
                    OperatingPoint point = OperatingPoints.of(chain);
                    double amps = 12.0 / (1.0 + 0.001 * (nets - 2) + 100.0);
                    assertEquals(100.0 * amps, point.volts(nets - 1), 1e-6);
                    assertTrue(point.worstKclAmps() <= 1e-6);
                });
    }

    @Test
    void aStarOfAHundredThousandNets() {
        int nets = 100_000;
        List<Branch> branches = new ArrayList<>();
        branches.add(branch(1, 0, new SourceBehindOhms(12.0, 1e-5)));
        for (int net = 2; net < nets; net++) {
            branches.add(branch(1, net, new Resistive(1.0)));
            branches.add(branch(net, 0, new Resistive(1e5)));
        }
        Network star = new Network(nets, branches);
        assertTimeout(
                Duration.ofSeconds(20),
                () -> assertEquals(12.0, OperatingPoints.of(star).volts(nets - 1), 1e-3));
    }

    static Stream<DoubleFunction<BranchLaw>> lawsOfOneNumber() {
        return Stream.of(
                Resistive::new,
                x -> new SourceBehindOhms(12.0, x),
                x -> new LimitedSource(12.0, x, 5.0),
                x -> new ChargeOnly(12.0, x),
                x -> new ConstantPower(10.0, x),
                x -> new ConstantCurrent(10.0, x),
                x -> new DiodeDrop(x, 0.03, 0.01),
                x -> new DiodeDrop(1e-6, x, 0.01),
                x -> new DiodeDrop(1e-6, 0.03, x),
                x -> new LimitedConductor(x, 5.0),
                x -> new LimitedConductor(0.01, x),
                x -> new ConverterInput(0, x, 1.0, 8.0),
                x -> new ConverterInput(0, 0.9, 1.0, x));
    }

    @ParameterizedTest
    @MethodSource("lawsOfOneNumber")
    void impossibleValuesAreRefusedByValueAndMend(DoubleFunction<BranchLaw> law) {
        double[] impossible = {
            Double.NaN, -1.0, 0.0, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (double value : impossible) {
            IllegalArgumentException refusal =
                    assertThrows(IllegalArgumentException.class, () -> law.apply(value));
            String message = String.valueOf(refusal.getMessage());
            assertTrue(message.contains("is " + value) && message.contains("must be"), message);
        }
    }

    @Test
    void indexesOutsideTheNetworkAreRefused() {
        Resistive ohm = new Resistive(1.0);
        assertThrows(IllegalArgumentException.class, () -> branch(1, 1, ohm));
        assertThrows(IllegalArgumentException.class, () -> branch(-1, 0, ohm));
        assertThrows(IllegalArgumentException.class, () -> network(2, branch(2, 0, ohm)));
        assertThrows(IllegalArgumentException.class, () -> network(0));
        ConverterInput stray = new ConverterInput(5, 0.9, 1.0, 8.0);
        assertThrows(IllegalArgumentException.class, () -> network(2, branch(1, 0, stray)));
    }

    @Test
    void aTopologyTakesExtraBranchesWhereItHasRoom() throws NoOperatingPoint {
        Topology chain = Topology.of(5, new int[] {1, 2, 3}, new int[] {2, 3, 4});
        assertTrue(chain.accommodates(3, 0) && chain.accommodates(2, 1));
        assertFalse(chain.accommodates(1, 4) || chain.accommodates(2, 2));
        int[] from = {1, 1, 3};
        int[] to = {0, 2, 0};
        BranchLaw[] laws = {
            new SourceBehindOhms(10.0, 1.0), new Resistive(1.0), new Resistive(1.0)
        };
        NodalSolver solver = new NodalSolver(chain, from, to, laws);
        solver.solve();
        assertEquals(10.0, solver.volts(2), 1e-9);
        int[] across = {1, 1, 4};
        assertThrows(
                IllegalArgumentException.class,
                () -> new NodalSolver(chain, across, new int[] {0, 4, 0}, laws));
    }
}
