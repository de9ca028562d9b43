package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.network.Laws.assertLawsHold;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same networks, solved by an independent general circuit simulator; origin, version and
 * tolerance stand in the head of the data file, and the script beside it makes or checks it anew.
 */
class SimulatorReferenceTest {
    private static final double RELATIVE = 1e-6;
    private static final double ABSOLUTE_VOLTS = 2e-6;

    static Stream<ReferenceNetwork> networks() {
        return ReferenceNetwork.read("reference/networks.txt").stream();
    }

    @ParameterizedTest
    @MethodSource("networks")
    void everyNetVoltageAgrees(ReferenceNetwork reference) throws NoOperatingPoint {
        OperatingPoint point = OperatingPoints.of(reference.network());
        assertLawsHold(point, reference.network());
        for (int net = 1; net < reference.nets().size(); net++) {
            double expected = reference.volts()[net];
            double allowed = ABSOLUTE_VOLTS + RELATIVE * Math.abs(expected);
            assertEquals(expected, point.volts(net), allowed, reference.nets().get(net));
        }
    }

    @Test
    void theReferenceIsLargeEnoughToMeanSomething() {
        List<ReferenceNetwork> all = networks().toList();
        assertTrue(all.stream().filter(n -> !n.name().startsWith("random")).count() >= 30);
        assertTrue(all.stream().filter(n -> n.name().startsWith("random")).count() >= 200);
    }

    static Stream<ReferenceNetwork> unsolved() {
        return ReferenceNetwork.read("reference/unsolved.txt").stream();
    }

    /** The simulator has no answer for these: held to the laws, and compared with nothing. */
    @ParameterizedTest
    @MethodSource("unsolved")
    void whatTheSimulatorCouldNotSolveObeysItsLaws(ReferenceNetwork left) throws NoOperatingPoint {
        assertLawsHold(OperatingPoints.of(left.network()), left.network());
    }

    @Test
    void everyRandomNetworkThatWasDrawnIsAccountedFor() {
        long solved = networks().filter(n -> n.name().startsWith("random")).count();
        assertEquals(319, solved);
        assertEquals(41, unsolved().count());
        List<String> names =
                Stream.concat(networks(), unsolved()).map(ReferenceNetwork::name).toList();
        assertEquals(names.size(), names.stream().distinct().count(), "one stands in both files");
    }
}
