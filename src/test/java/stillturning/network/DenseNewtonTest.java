package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stillturning.network.Laws.branch;
import static stillturning.network.Laws.network;
import static stillturning.network.Laws.solved;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** The dense last resort arrives where the sparse way does, on its own. */
class DenseNewtonTest {

    /** A converter on its own input, where the neglected slope is larger than the kept ones. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 1.0})
    void aConverterThatFeedsItself(double tieOhms) throws NoOperatingPoint {
        assertArrives(
                network(
                        4,
                        branch(1, 0, new SourceBehindOhms(12.8, 0.02)),
                        branch(1, 2, new Resistive(0.005)),
                        branch(2, 0, new ConverterInput(3, 0.9, 1.0, 8.0)),
                        branch(3, 0, new LimitedSource(13.8, 0.01, 20.0)),
                        branch(3, 2, new Resistive(tieOhms)),
                        branch(3, 0, new Resistive(3.0))));
    }

    @Test
    void anAircraftWithDiodesAndConstantPower() throws NoOperatingPoint {
        assertArrives(AircraftNetwork.of(60).network());
    }

    /** From a tenth of a volt beside the answer everywhere: Newton alone, without start-up help. */
    private static void assertArrives(Network network) throws NoOperatingPoint {
        OperatingPoint point = solved(network);
        int[] from = network.branches().stream().mapToInt(Branch::from).toArray();
        int[] to = network.branches().stream().mapToInt(Branch::to).toArray();
        BranchLaw[] laws = network.branches().stream().map(Branch::law).toArray(BranchLaw[]::new);
        Topology topology = Topology.of(network.nets(), from, to);
        NodalEquations equations =
                new NodalEquations(topology, new BranchEnds(topology, from, to), laws);
        equations.refresh();
        double[] start = new double[network.nets()];
        for (int net = 1; net < start.length; net++) {
            start[topology.position[net]] = point.volts(net) + 0.1 * (net % 2);
        }
        double[] found = DenseNewton.from(start, equations);
        for (int net = 1; net < start.length; net++) {
            assertEquals(point.volts(net), found[topology.position[net]], 1e-8, "net " + net);
        }
    }
}
