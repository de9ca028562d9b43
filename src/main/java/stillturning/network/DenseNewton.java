package stillturning.network;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;

/**
 * The last resort where a converter feeds back into its own input, so that the sparse symmetric
 * slopes mislead: Newton with every slope, by a dense factorisation with pivoting, the step halved
 * until the residual shrinks. Allocates; slow.
 */
final class DenseNewton {
    /** Beyond this a dense matrix costs seconds. */
    private static final int MOST_NETS = 1200;

    private static final int MOST_STEPS = 100;
    private static final double LEAST_PART = 1e-9;

    private final NodalEquations equations;
    private final double[] anchor;
    private final double tieSiemens;
    private final int nets;
    private final double[] excess;
    private double[] volts;
    private double size;

    private DenseNewton(double[] start, NodalEquations equations, double tieSiemens) {
        this.equations = equations;
        this.tieSiemens = tieSiemens;
        anchor = start;
        nets = start.length - 1;
        volts = start.clone();
        excess = new double[start.length];
        size = sizeAt(volts);
    }

    /** The best voltages reachable from a start. */
    static double[] from(double[] start, NodalEquations equations) {
        return tied(start, equations, 0.0);
    }

    /**
     * The best voltages reachable while every net is tied to where it starts.
     *
     * @param tieSiemens conductance from each net to its voltage at the start (S)
     */
    static double[] tied(double[] start, NodalEquations equations, double tieSiemens) {
        DenseNewton newton = new DenseNewton(start, equations, tieSiemens);
        if (newton.nets <= MOST_NETS && Double.isFinite(newton.size)) {
            int steps = 0;
            while (steps < MOST_STEPS && newton.size > 0.0 && newton.advanced()) {
                steps++;
            }
        }
        return newton.volts;
    }

    private boolean advanced() {
        leftover(volts);
        double[][] slopes = slopes();
        DecompositionSolver solver =
                new LUDecomposition(
                                new Array2DRowRealMatrix(slopes, false)
                                        .getSubMatrix(0, nets - 1, 0, nets - 1))
                        .getSolver();
        if (!solver.isNonSingular()) {
            return false;
        }
        double[] step = solver.solve(new ArrayRealVector(excess, 0, nets)).toArray();
        for (double part = 1.0; part > LEAST_PART; part *= 0.5) {
            double[] next = volts.clone();
            for (int k = 0; k < nets; k++) {
                next[k] += part * step[k];
            }
            double nextSize = sizeAt(next);
            if (nextSize < size) {
                volts = next;
                size = nextSize;
                return true;
            }
        }
        return false;
    }

    /** How the current out of each net depends on every voltage, converters' coupling included. */
    private double[][] slopes() {
        double[][] rows = new double[nets + 1][nets + 1];
        Islands islands = equations.islands();
        for (int p = 0; p < islands.pins(); p++) {
            rows[islands.pinned(p)][islands.pinned(p)] += NodalEquations.PIN_SIEMENS;
        }
        for (int k = 0; k < nets; k++) {
            rows[k][k] += tieSiemens;
        }
        for (int b = 0; b < equations.branches(); b++) {
            BranchLaw law = equations.law(b);
            depend(rows, b, b, law.siemensAt(across(b), equations.amps[b]));
            if (law instanceof ConverterInput input) {
                depend(rows, b, input.outputBranch(), coupling(b, input));
            }
        }
        return rows;
    }

    /** Change of a converter's input current with the voltage at its output (S). */
    private double coupling(int branch, ConverterInput input) {
        double watts = equations.delivered(input, volts);
        if (watts <= 0.0) {
            return 0.0;
        }
        int out = input.outputBranch();
        double amps = equations.amps[out];
        double wattsPerVolt =
                -(amps + across(out) * equations.law(out).siemensAt(across(out), amps));
        double idle = input.ampsAt(across(branch), 0.0);
        return (equations.amps[branch] - idle) / watts * wattsPerVolt;
    }

    private double across(int branch) {
        return volts[equations.from[branch]] - volts[equations.to[branch]];
    }

    private void depend(double[][] rows, int branch, int on, double slope) {
        rows[equations.from[branch]][equations.from[on]] += slope;
        rows[equations.from[branch]][equations.to[on]] -= slope;
        rows[equations.to[branch]][equations.from[on]] -= slope;
        rows[equations.to[branch]][equations.to[on]] += slope;
    }

    /** What each net is left with, its tie included. */
    private void leftover(double[] at) {
        equations.evaluate(at, excess);
        for (int k = 0; k < nets; k++) {
            excess[k] -= tieSiemens * (at[k] - anchor[k]);
        }
    }

    private double sizeAt(double[] at) {
        leftover(at);
        double sum = 0.0;
        for (int k = 0; k < nets; k++) {
            sum += excess[k] * excess[k];
        }
        return Math.sqrt(sum);
    }
}
