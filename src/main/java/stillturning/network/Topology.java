package stillturning.network;

import java.util.Arrays;
import stillturning.network.law.BranchChecks;

/**
 * Which nets are joined by any branch, open or not, and the order in which they are eliminated,
 * worked out once and shared by any number of solvers. Immutable.
 */
public final class Topology {
    private static final long MOST_PRODUCTS = 200_000_000L;

    private final int nets;

    /** Elimination step of each net; the reference comes after the last. */
    final int[] position;

    /** Net of each step. */
    final int[] netAt;

    /** Where the neighbours of each step begin in {@link #rows}; one entry more than steps. */
    final int[] start;

    /** Steps still ahead that are joined to a step when its turn comes, ascending. */
    final int[] rows;

    /** For each pair of neighbours of each step in turn: where that pair's own entry is. */
    final int[] targets;

    /** Where the pairs of each step begin in {@link #targets}. */
    final int[] pairs;

    private Topology(int nets, int[] position, int[][] ahead) {
        this.nets = nets;
        this.position = position;
        netAt = new int[nets];
        for (int net = 0; net < nets; net++) {
            netAt[position[net]] = net;
        }
        int steps = nets - 1;
        start = new int[steps + 1];
        pairs = new int[steps + 1];
        long products = 0;
        for (int k = 0; k < steps; k++) {
            int size = ahead[k].length;
            start[k + 1] = start[k] + size;
            products += (long) size * (size - 1) / 2;
            if (products > MOST_PRODUCTS) {
                throw new IllegalArgumentException(
                        nets
                                + " nets are meshed too densely for "
                                + MOST_PRODUCTS
                                + " products a factor");
            }
            pairs[k + 1] = (int) products;
        }
        rows = new int[start[steps]];
        for (int k = 0; k < steps; k++) {
            System.arraycopy(ahead[k], 0, rows, start[k], ahead[k].length);
        }
        targets = new int[pairs[steps]];
        int t = 0;
        for (int k = 0; k < steps; k++) {
            for (int p = start[k]; p < start[k + 1]; p++) {
                for (int q = p + 1; q < start[k + 1]; q++) {
                    targets[t++] = entry(rows[p], rows[q]);
                }
            }
        }
    }

    /**
     * Analyses a structure.
     *
     * @param nets number of nets, the reference included
     * @param from net at one end of each branch
     * @param to net at its other end
     * @throws IllegalArgumentException if an index is out of range or the ends do not pair up
     */
    public static Topology of(int nets, int[] from, int[] to) {
        return of(nets, from, to, new boolean[from.length]);
    }

    /**
     * Analyses a structure of which the laws of some branches will always be straight. Nets between
     * two neighbours that nothing else touches come first: a solver eliminates them once for many
     * solutions.
     *
     * @param straight for each branch whether its law will always be straight
     * @throws IllegalArgumentException if an index is out of range or the ends do not pair up
     */
    public static Topology of(int nets, int[] from, int[] to, boolean[] straight) {
        if (nets < 1 || from.length != to.length || from.length != straight.length) {
            throw new IllegalArgumentException(
                    nets + " nets, " + from.length + " starts and " + to.length + " ends");
        }
        MinimumDegree order = new MinimumDegree(nets);
        for (int b = 0; b < from.length; b++) {
            BranchChecks.index("branch " + b + " starts at net", from[b], nets);
            BranchChecks.index("branch " + b + " ends at net", to[b], nets);
            order.join(from[b], to[b]);
            if (!straight[b]) {
                order.defer(from[b]);
                order.defer(to[b]);
            }
        }
        int[] sequence = order.sequence();
        int[] position = new int[nets];
        position[0] = nets - 1;
        for (int k = 0; k < sequence.length; k++) {
            position[sequence[k]] = k;
        }
        int[][] ahead = new int[nets - 1][];
        for (int k = 0; k < sequence.length; k++) {
            ahead[k] = order.aheadOf(sequence[k]);
            for (int i = 0; i < ahead[k].length; i++) {
                ahead[k][i] = position[ahead[k][i]];
            }
            Arrays.sort(ahead[k]);
        }
        return new Topology(nets, position, ahead);
    }

    /** Number of nets, the reference included. */
    public int nets() {
        return nets;
    }

    /**
     * Whether a branch between two nets fits without a new analysis.
     *
     * @throws IllegalArgumentException if a net is not in the network
     */
    public boolean accommodates(int from, int to) {
        BranchChecks.index("net", from, nets);
        BranchChecks.index("net", to, nets);
        return from != to && slot(from, to) >= 0;
    }

    /** Number of nets besides the reference. */
    int steps() {
        return nets - 1;
    }

    /** Length of a conductance array: one entry a net to the reference, one a joined pair. */
    int slots() {
        return steps() + rows.length;
    }

    /** Where the conductance between two nets is kept, or below 0. */
    int slot(int from, int to) {
        int early = Math.min(position[from], position[to]);
        int late = Math.max(position[from], position[to]);
        return late == steps() ? early : entry(early, late);
    }

    private int entry(int early, int late) {
        int at = Arrays.binarySearch(rows, start[early], start[early + 1], late);
        return at < 0 ? -1 : steps() + at;
    }
}
