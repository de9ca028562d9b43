package stillturning.network;

import stillturning.network.law.BranchChecks;
import stillturning.network.law.BranchLaw;

/**
 * Solves one network again and again while its laws change. Keeps its workspace: nothing is
 * allocated in {@link #solve}. For one thread; the {@link Topology} may be shared.
 */
public final class NodalSolver {
    private final Topology topology;
    private final BranchEnds ends;
    private final NodalEquations equations;
    private final Newton newton;
    private final WayAhead ahead;
    private final int[] from;
    private final int[] to;
    private boolean changed = true;
    private boolean warm;
    private final long[] knownDoubts = new long[8];
    private int known;

    /**
     * A solver, cold.
     *
     * @param topology structure that accommodates every branch
     * @param from net at which each branch starts
     * @param to net at which it ends
     * @param laws its law
     * @throws IllegalArgumentException if the arrays differ in length, or a branch does not fit
     */
    public NodalSolver(Topology topology, int[] from, int[] to, BranchLaw[] laws) {
        this(topology, ends(topology, from, to, laws.length), laws);
    }

    private static BranchEnds ends(Topology topology, int[] from, int[] to, int laws) {
        if (from.length != laws || to.length != laws) {
            throw new IllegalArgumentException(
                    from.length + " starts, " + to.length + " ends and " + laws + " laws");
        }
        return new BranchEnds(topology, from, to);
    }

    private NodalSolver(Topology topology, BranchEnds ends, BranchLaw[] laws) {
        this.topology = topology;
        this.ends = ends;
        equations = new NodalEquations(topology, ends, laws);
        newton = new Newton(equations, topology);
        ahead = new WayAhead(topology.nets());
        from = ends.from;
        to = ends.to;
    }

    /**
     * A solver of the same network with the same laws, which starts from the same voltages: to ask
     * what other laws would do while this one stays as it is.
     */
    public NodalSolver another() {
        NodalSolver other = new NodalSolver(topology, ends, equations.laws());
        System.arraycopy(newton.volts(), 0, other.newton.volts(), 0, topology.nets());
        other.warm = true;
        return other;
    }

    /** Replaces the law of a branch. */
    public void law(int branch, BranchLaw law) {
        changed |= equations.law(branch, law);
    }

    /** The law of a branch. */
    public BranchLaw law(int branch) {
        return equations.law(branch);
    }

    /**
     * Gives the voltages from which the next solve starts.
     *
     * @param volts one a net (V)
     * @throws IllegalArgumentException if their number is wrong or one is not finite
     */
    public void start(double[] volts) {
        if (volts.length != topology.nets()) {
            throw new IllegalArgumentException(
                    volts.length + " voltages for " + topology.nets() + " nets");
        }
        for (int net = 0; net < volts.length; net++) {
            if (!Double.isFinite(volts[net])) {
                throw new IllegalArgumentException(
                        "net " + net + " starts at " + volts[net] + " V");
            }
            newton.volts()[topology.position[net]] = volts[net] - volts[0];
        }
        changed = true;
        warm = true;
        known = 0;
    }

    /**
     * From the point found last the laws begin to drift.
     *
     * @param goesOn whether they go on to drift as they did
     */
    public void setOut(boolean goesOn) {
        ahead.begin(newton.volts(), goesOn);
    }

    /**
     * Finds the operating point, from the last one if there is one. Of two points that a
     * constant-power load allows, the one with the load at its power is taken.
     *
     * @throws NoOperatingPoint if none was found; the next solve then starts from nothing
     */
    public void solve() throws NoOperatingPoint {
        solve(0);
    }

    /**
     * The same on the way of drifting laws, from where the points found on it point to.
     *
     * @param along how far from where it set out, in any unit
     * @throws NoOperatingPoint if none was found; the next solve then starts from nothing
     */
    public void solve(double along) throws NoOperatingPoint {
        if (!changed) {
            return;
        }
        boolean newLaws = equations.refresh();
        newton.begin(newLaws);
        if (along > 0) {
            ahead.foretell(newton.volts(), equations.resistances.kept(), along);
        }
        findPoint(newLaws);
        if (along > 0) {
            ahead.found(newton.volts(), along);
        }
    }

    private void findPoint(boolean newLaws) throws NoOperatingPoint {
        boolean found = warm && newton.converge();
        if (newLaws) {
            known = 0;
        }
        if (!found || !isKnown(equations.doubts(newton.volts()))) {
            found = fromNothing();
            knownDoubts[known++ % knownDoubts.length] = equations.doubts(newton.volts());
        }
        warm = found;
        changed = !found;
        if (!found) {
            throw failure(newton.excess());
        }
    }

    /** While sources merely drift, what was once held against the cold answer stays as good. */
    private boolean isKnown(long doubts) {
        boolean found = doubts == 0;
        for (int i = 0; i < Math.min(known, knownDoubts.length); i++) {
            found |= knownDoubts[i] == doubts;
        }
        return found;
    }

    private boolean fromNothing() {
        return newton.convergeFromNothing()
                || newton.convergeBySharpening()
                || newton.holdsAt(DenseNewton.from(newton.volts(), equations))
                || newton.holdsAt(PseudoTransient.from(newton.nearlyUnloaded(), equations))
                || newton.holdsAt(PseudoTransient.from(new double[topology.nets()], equations));
    }

    /** Names the net with the largest leftover and its strongest branch. */
    private NoOperatingPoint failure(double[] excess) {
        int worst = 0;
        for (int k = 0; k < topology.steps(); k++) {
            if (!(Math.abs(excess[k]) <= Math.abs(excess[worst]))) {
                worst = k;
            }
        }
        int strongest = -1;
        for (int b = 0; b < from.length; b++) {
            boolean there = from[b] == worst || to[b] == worst;
            if (there && (strongest < 0 || Math.abs(amps(b)) > Math.abs(amps(strongest)))) {
                strongest = b;
            }
        }
        return new NoOperatingPoint(topology.netAt[worst], strongest, excess[worst]);
    }

    /**
     * Voltage of a net at the last solve (V).
     *
     * @throws IllegalArgumentException if the net is not in the network
     */
    public double volts(int net) {
        BranchChecks.index("net", net, topology.nets());
        return newton.volts()[topology.position[net]];
    }

    /**
     * Voltages between pairs of nets at the last solve; 0 where nothing joins the two, as a meter
     * shows.
     *
     * @param plus nets
     * @param minus as many others
     * @param count of the pairs, from the first
     * @param into where they go (V)
     */
    public void volts(int[] plus, int[] minus, int count, double[] into) {
        double[] volts = newton.volts();
        int[] position = topology.position;
        Islands islands = equations.islands();
        for (int i = 0; i < count; i++) {
            int one = position[plus[i]];
            int other = position[minus[i]];
            boolean alike = islands.islandOf(one) == islands.islandOf(other);
            into[i] = alike ? volts[one] - volts[other] : 0;
        }
    }

    /**
     * Currents of branches at the last solve.
     *
     * @param count of the branches, from the first
     * @param into where they go (A)
     */
    public void amps(int[] branches, int count, double[] into) {
        double[] amps = equations.amps;
        for (int i = 0; i < count; i++) {
            into[i] = amps[branches[i]];
        }
    }

    /**
     * Current of a branch from {@code from} to {@code to} at the last solve (A).
     *
     * @throws IllegalArgumentException if the branch is not in the network
     */
    public double amps(int branch) {
        BranchChecks.index("branch", branch, equations.amps.length);
        return equations.amps[branch];
    }

    /**
     * Powers that the branches took up at the last solve; that of a source is below 0.
     *
     * @param into where they go, one a branch (W)
     */
    public void watts(double[] into) {
        double[] volts = newton.volts();
        double[] amps = equations.amps;
        int[] begins = from;
        int[] ends = to;
        for (int branch = 0; branch < begins.length; branch++) {
            into[branch] = (volts[begins[branch]] - volts[ends[branch]]) * amps[branch];
        }
    }

    /**
     * A number that nets share which a conducting path joined at the last solve.
     *
     * @throws IllegalArgumentException if the net is not in the network
     */
    public int island(int net) {
        BranchChecks.index("net", net, topology.nets());
        return equations.islands().islandOf(topology.position[net]);
    }

    /**
     * Whether a net had no conducting path to net 0 at the last solve.
     *
     * @throws IllegalArgumentException if the net is not in the network
     */
    public boolean floating(int net) {
        BranchChecks.index("net", net, topology.nets());
        return equations.islands().floating(topology.position[net]);
    }

    /** Largest sum of currents at any net at the last solve (A). */
    public double worstKclAmps() {
        return newton.worstAmps();
    }

    /** Steps of the last solve that had anything to do. */
    public int iterations() {
        return newton.steps();
    }

    /** The whole answer of the last solve. */
    public OperatingPoint point() {
        double[] volts = new double[topology.nets()];
        boolean[] floating = new boolean[topology.nets()];
        for (int net = 0; net < volts.length; net++) {
            volts[net] = volts(net);
            floating[net] = floating(net);
        }
        return new OperatingPoint(
                volts, equations.amps, floating, newton.worstAmps(), newton.steps());
    }
}
