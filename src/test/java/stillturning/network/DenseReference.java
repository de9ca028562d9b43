package stillturning.network;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/** Nodal analysis written plainly for resistances and batteries, by a library's dense LU. */
final class DenseReference {
    private DenseReference() {}

    /** Voltages of a network of straight laws in which every net has a path to net 0. */
    static double[] volts(Network network) {
        int size = network.nets() - 1;
        double[][] siemens = new double[size][size];
        double[] amps = new double[size];
        for (Branch branch : network.branches()) {
            int from = branch.from() - 1;
            int to = branch.to() - 1;
            double slope = branch.law().siemensAt(0.0, 0.0);
            double injected = -branch.law().ampsAt(0.0);
            if (from >= 0) {
                siemens[from][from] += slope;
                amps[from] += injected;
            }
            if (to >= 0) {
                siemens[to][to] += slope;
                amps[to] -= injected;
            }
            if (from >= 0 && to >= 0) {
                siemens[from][to] -= slope;
                siemens[to][from] -= slope;
            }
        }
        double[] free =
                new LUDecomposition(new Array2DRowRealMatrix(siemens))
                        .getSolver()
                        .solve(new ArrayRealVector(amps))
                        .toArray();
        double[] volts = new double[size + 1];
        System.arraycopy(free, 0, volts, 1, size);
        return volts;
    }
}
