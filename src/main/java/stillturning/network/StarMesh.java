package stillturning.network;

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
    private final double[] left;
    private final double[] share;
    private final double[] inverse;

    StarMesh(Topology topology) {
        this.topology = topology;
        left = new double[topology.slots()];
        share = new double[topology.rows.length];
        inverse = new double[topology.steps()];
    }

    /**
     * Factors.
     *
     * @param siemens conductances by {@link Topology#slot}
     * @return whether every pivot is positive, that is, whether the matrix is positive definite
     */
    boolean reduce(double[] siemens) {
        System.arraycopy(siemens, 0, left, 0, left.length);
        int[] start = topology.start;
        int[] rows = topology.rows;
        int[] targets = topology.targets;
        int steps = topology.steps();
        int t = 0;
        for (int k = 0; k < steps; k++) {
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
                share[p] = part;
                left[rows[p]] += part * toReference;
                for (int q = p + 1; q < end; q++) {
                    left[targets[t++]] += part * left[steps + q];
                }
            }
        }
        return true;
    }

    /**
     * Solves with the last factors.
     *
     * @param amps current into each net, by elimination step
     * @param volts its voltage, filled in; the reference's entry is set to 0
     */
    void solve(double[] amps, double[] volts) {
        int[] start = topology.start;
        int[] rows = topology.rows;
        int steps = topology.steps();
        System.arraycopy(amps, 0, volts, 0, steps);
        for (int k = 0; k < steps; k++) {
            double into = volts[k];
            for (int p = start[k]; p < start[k + 1]; p++) {
                volts[rows[p]] += share[p] * into;
            }
        }
        for (int k = steps - 1; k >= 0; k--) {
            double v = volts[k] * inverse[k];
            for (int p = start[k]; p < start[k + 1]; p++) {
                v += share[p] * volts[rows[p]];
            }
            volts[k] = v;
        }
        volts[steps] = 0.0;
    }
}
