package stillturning.network;

/** Where branches start and end, in steps of the elimination, and where their conductances go. */
final class BranchEnds {
    /** Step of the net where each branch starts. */
    final int[] from;

    /** Step of the net where it ends. */
    final int[] to;

    /** Its {@link Topology#slot}. */
    final int[] slot;

    /**
     * @param from net at which each branch starts
     * @param to net at which it ends
     * @throws IllegalArgumentException if the topology does not foresee a branch
     */
    BranchEnds(Topology topology, int[] from, int[] to) {
        int count = from.length;
        this.from = new int[count];
        this.to = new int[count];
        slot = new int[count];
        for (int b = 0; b < count; b++) {
            if (!topology.accommodates(from[b], to[b])) {
                throw new IllegalArgumentException(
                        "branch %d joins nets %d and %d, which the topology does not foresee; analyse it anew"
                                .formatted(b, from[b], to[b]));
            }
            this.from[b] = topology.position[from[b]];
            this.to[b] = topology.position[to[b]];
            slot[b] = topology.slot(from[b], to[b]);
        }
    }
}
