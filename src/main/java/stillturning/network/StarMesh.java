package stillturning.network;

import java.util.Arrays;

/**
 * The symmetric sparse factorisation LDLᵀ of nodal equations, in the form of the star-mesh
 * transform: a net goes, and its neighbours are joined by what it conducted. The conductance of
 * each net to the reference is kept instead of the diagonal, so a passive network is factored by
 * additions of positive numbers alone and loses no digits, however wide its conductances spread.
 */
final class StarMesh {
    /** A pivot this much smaller than its own terms has no digits left. */
    private static final double SOUND = 1e-11;

    private final Topology topology;
    private final double[] ahead;
    private final double[] left;
    private final double[] share;
    private final double[] inverse;
    private int first;

    StarMesh(Topology topology) {
        this.topology = topology;
        ahead = new double[topology.slots()];
        left = new double[topology.slots()];
        share = new double[topology.rows.length];
        inverse = new double[topology.steps()];
    }

    /**
     * Eliminates the first nets once and for all factorings that follow.
     *
     * @param siemens conductances by {@link Topology#slot}, above 0 on the way
     * @param until first step that is not eliminated
     */
    void reduceAhead(double[] siemens, int until) {
        first = until;
        System.arraycopy(siemens, 0, ahead, 0, ahead.length);
        eliminate(ahead, 0, until);
    }

    /** What was left between the others when the first nets were eliminated. */
    double[] ahead() {
        return ahead;
    }

    /**
     * Factors what the first nets left, and what has been added.
     *
     * @param siemens conductances by {@link Topology#slot}
     * @return whether every pivot is positive, that is, whether the matrix is positive definite
     */
    boolean reduce(double[] siemens) {
        int pairs = topology.steps() + topology.start[first];
        System.arraycopy(siemens, first, left, first, topology.steps() - first);
        System.arraycopy(siemens, pairs, left, pairs, left.length - pairs);
        return eliminate(left, first, topology.steps());
    }

    private boolean eliminate(double[] left, int begins, int ends) {
        int[] start = topology.start;
        int[] rows = topology.rows;
        int[] targets = topology.targets;
        int steps = topology.steps();
        double[] parts = share;
        int t = topology.pairs[begins];
        for (int k = begins; k < ends; k++) {
            int begin = start[k];
            int end = start[k + 1];
            double toReference = left[k];
            double pivot = toReference;
            double terms = Math.abs(toReference);
            for (int p = begin; p < end; p++) {
                pivot += left[steps + p];
                terms += Math.abs(left[steps + p]);
            }
            if (!(pivot > SOUND * terms)) {
                return false;
            }
            double one = 1.0 / pivot;
            inverse[k] = one;
            for (int p = begin; p < end; p++) {
                double part = left[steps + p] * one;
                parts[p] = part;
                left[rows[p]] += part * toReference;
                for (int q = p + 1; q < end; q++) {
                    left[targets[t++]] += part * left[steps + q];
                }
            }
        }
        return true;
    }

    /**
     * Finds the voltages of the first nets, into which nothing is driven.
     *
     * @param volts voltages of the others; filled in
     */
    void expand(double[] volts) {
        Arrays.fill(volts, 0, first, 0.0);
        back(volts, 0, first);
    }

    /**
     * Solves with the last factors.
     *
     * @param amps current into each net that was not eliminated ahead, by elimination step
     * @param volts its voltage, filled in; the reference's entry is set to 0
     */
    void solve(double[] amps, double[] volts) {
        int steps = topology.steps();
        System.arraycopy(amps, first, volts, first, steps - first);
        int[] start = topology.start;
        int[] rows = topology.rows;
        double[] parts = share;
        for (int k = first; k < steps; k++) {
            double into = volts[k];
            int end = start[k + 1];
            for (int p = start[k]; p < end; p++) {
                volts[rows[p]] += parts[p] * into;
            }
        }
        back(volts, first, steps);
    }

    private void back(double[] volts, int begins, int ends) {
        int[] start = topology.start;
        int[] rows = topology.rows;
        volts[topology.steps()] = 0.0;
        double[] parts = share;
        for (int k = ends - 1; k >= begins; k--) {
            double v = volts[k] * inverse[k];
            int end = start[k + 1];
            for (int p = start[k]; p < end; p++) {
                v += parts[p] * volts[rows[p]];
            }
            volts[k] = v;
        }
    }
}
