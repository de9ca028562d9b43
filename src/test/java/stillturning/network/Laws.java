package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;

/** The laws that every solved network obeys, worked out here again from the answer alone. */
final class Laws {
    private Laws() {}

    /** Solves from nothing and holds the answer against the laws. */
    static OperatingPoint solved(Network network) throws NoOperatingPoint {
        OperatingPoint point = OperatingPoints.of(network);
        assertLawsHold(point, network);
        return point;
    }

    /** Kirchhoff's current law, each branch's own law, and energy. */
    static void assertLawsHold(OperatingPoint point, Network network) {
        assertCurrentsHold(point, network);
        double deliveredWatts = 0.0;
        double drawnWatts = 0.0;
        for (int b = 0; b < network.branches().size(); b++) {
            Branch branch = network.branches().get(b);
            double watts = (point.volts(branch.from()) - point.volts(branch.to())) * point.amps(b);
            deliveredWatts += Math.max(0.0, -watts);
            drawnWatts += Math.max(0.0, watts);
        }
        double allowed = 1e-5 + 1e-9 * deliveredWatts;
        assertEquals(deliveredWatts, drawnWatts, allowed, "energy does not add up");
    }

    /** Kirchhoff's current law as promised, and each branch's own law. */
    static void assertCurrentsHold(OperatingPoint point, Network network) {
        double[] into = new double[network.nets()];
        for (int b = 0; b < network.branches().size(); b++) {
            Branch branch = network.branches().get(b);
            double volts = point.volts(branch.from()) - point.volts(branch.to());
            double amps = point.amps(b);
            into[branch.from()] -= amps;
            into[branch.to()] += amps;
            double lawful = lawful(branch.law(), volts, point, network);
            double least = 1e-9 + 1e-12 * Math.abs(lawful);
            assertEquals(lawful, amps, least, "branch " + b + " leaves its law " + branch.law());
        }
        for (int net = 0; net < into.length; net++) {
            assertEquals(0.0, into[net], 1e-6, "current does not add up at net " + net);
        }
        assertEquals(0.0, point.volts(0), "the reference moved");
        assertTrue(point.worstKclAmps() <= 1e-6, "promised residual");
    }

    private static double lawful(
            BranchLaw law, double volts, OperatingPoint point, Network network) {
        if (law instanceof ConverterInput input) {
            Branch out = network.branches().get(input.outputBranch());
            double across = point.volts(out.from()) - point.volts(out.to());
            return input.ampsAt(volts, -across * point.amps(input.outputBranch()));
        }
        return law.ampsAt(volts);
    }

    /** A network from rows of branches. */
    static Network network(int nets, Branch... branches) {
        return new Network(nets, List.of(branches));
    }

    static Branch branch(int from, int to, BranchLaw law) {
        return new Branch(from, to, law);
    }
}
