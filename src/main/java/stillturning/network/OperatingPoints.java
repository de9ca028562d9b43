package stillturning.network;

import stillturning.network.law.BranchLaw;

/** One-off answers; for many points of one network use {@link NodalSolver}. */
public final class OperatingPoints {
    private OperatingPoints() {}

    /**
     * The steady point of a network, from nothing.
     *
     * @return a point whose currents add up within 1e-6 A at every net
     * @throws NoOperatingPoint if none was found; names the net and branch
     */
    public static OperatingPoint of(Network network) throws NoOperatingPoint {
        int branches = network.branches().size();
        int[] from = new int[branches];
        int[] to = new int[branches];
        BranchLaw[] laws = new BranchLaw[branches];
        for (int b = 0; b < branches; b++) {
            Branch branch = network.branches().get(b);
            from[b] = branch.from();
            to[b] = branch.to();
            laws[b] = branch.law();
        }
        NodalSolver solver = new NodalSolver(Topology.of(network.nets(), from, to), from, to, laws);
        solver.solve();
        return solver.point();
    }
}
