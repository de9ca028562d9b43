package stillturning.network;

import java.util.Arrays;

/**
 * The resistances of a network. What they make of the nets that nothing else touches is worked out
 * once for each set of them: those nets are eliminated, and the others are joined by what they
 * conducted. An iteration then goes over the others alone.
 */
final class Resistances {
    private final Topology topology;
    private final StarMesh mesh;
    private final int reference;
    private final int[] from;
    private final int[] to;
    private final int[] slot;

    private final int[] branch;
    private final double[] siemens;
    private int count;
    private boolean changed = true;

    private final double[] sum;
    private final int[] early;
    private final int[] late;
    private final double[] between;
    private int pairs;
    private int kept;

    Resistances(Topology topology, StarMesh mesh, BranchEnds ends) {
        this.topology = topology;
        this.mesh = mesh;
        from = ends.from;
        to = ends.to;
        slot = ends.slot;
        reference = topology.steps();
        branch = new int[from.length];
        siemens = new double[from.length];
        sum = new double[topology.slots()];
        early = new int[topology.rows.length];
        late = new int[topology.rows.length];
        between = new double[topology.rows.length];
    }

    void clear() {
        count = 0;
        changed = true;
    }

    /** Takes up a branch; its place here. */
    int add(int which, double conductance) {
        branch[count] = which;
        siemens[count] = conductance;
        return count++;
    }

    /** Changes the branch at a place. */
    void set(int place, double conductance) {
        changed |= conductance != siemens[place];
        siemens[place] = conductance;
    }

    /**
     * Eliminates again where anything has changed.
     *
     * @param first first step that another branch touches
     * @return whether anything has
     */
    boolean reduce(int first, Islands islands) {
        if (!changed) {
            return false;
        }
        changed = false;
        Arrays.fill(sum, 0.0);
        for (int p = 0; p < islands.pins(); p++) {
            sum[islands.pinned(p)] = NodalEquations.PIN_SIEMENS;
        }
        for (int s = 0; s < count; s++) {
            sum[slot[branch[s]]] += siemens[s];
        }
        keepFrom(first);
        return true;
    }

    /** Keeps every net, until a resistance changes. */
    void keepAll() {
        keepFrom(0);
    }

    private void keepFrom(int first) {
        // all is positive, so no pivot is lost
        mesh.reduceAhead(sum, first);
        kept = first;
        pairs = 0;
        double[] left = mesh.ahead();
        for (int k = kept; k < reference; k++) {
            for (int p = topology.start[k]; p < topology.start[k + 1]; p++) {
                if (left[reference + p] != 0.0) {
                    early[pairs] = k;
                    late[pairs] = topology.rows[p];
                    between[pairs++] = left[reference + p];
                }
            }
        }
    }

    /** First step that is not eliminated. */
    int kept() {
        return kept;
    }

    /** Conductances between the nets that are left, by {@link Topology#slot}. */
    void copySiemens(double[] into) {
        int first = reference + topology.start[kept];
        double[] left = mesh.ahead();
        System.arraycopy(left, kept, into, kept, reference - kept);
        System.arraycopy(left, first, into, first, left.length - first);
    }

    /** What each net that is left is left with by these branches alone (A). */
    void leave(double[] volts, double[] excess) {
        double[] left = mesh.ahead();
        for (int k = kept; k < reference; k++) {
            excess[k] = -left[k] * volts[k];
        }
        int[] one = early;
        int[] other = late;
        double[] slope = between;
        int count = pairs;
        for (int p = 0; p < count; p++) {
            double current = slope[p] * (volts[one[p]] - volts[other[p]]);
            excess[one[p]] -= current;
            excess[other[p]] += current;
        }
    }

    /** Adds what every net is left with by these branches, eliminated or not (A). */
    void carry(double[] volts, double[] amps, double[] excess) {
        int[] begins = from;
        int[] ends = to;
        for (int s = 0; s < count; s++) {
            int b = branch[s];
            int one = begins[b];
            int other = ends[b];
            double current = siemens[s] * (volts[one] - volts[other]);
            amps[b] = current;
            excess[one] -= current;
            excess[other] += current;
        }
    }
}
