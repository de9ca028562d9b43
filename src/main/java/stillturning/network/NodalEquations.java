package stillturning.network;

import java.util.Arrays;
import stillturning.network.law.BranchChecks;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.LimitedConductor;

/**
 * Kirchhoff's current law at every net but the reference, in elimination order: what is left over
 * at given voltages, and its slopes. Resistances are plain numbers; open branches are left out.
 */
final class NodalEquations {
    /** Ties a floating island's lowest net to 0 V; carries no current once the island balances. */
    static final double PIN_SIEMENS = 1.0;

    /** A load below this part of its floor is off rather than sagging. */
    private static final double DEAD = 0.01;

    private final Topology topology;
    private final int reference;

    /** Steps of the nets where branches start and end. */
    final int[] from;

    final int[] to;
    private final int[] slot;
    private final BranchLaw[] laws;
    private final boolean[] conducts;
    private final int[] place;
    private final Islands islands;

    /** Those of its branches that are resistances. */
    final Resistances resistances;

    private final Curves curves;

    private final int[] converter;
    private int converters;

    private final boolean[] iterated;
    private int firstIterated;
    private boolean straightThroughout;
    private boolean sourcesChanged;

    private final Emfs emfs;
    private boolean lawsChanged = true;
    private boolean pathsChanged = true;
    private double extraLeak;
    private double loadShare = 1.0;

    /** Current of each branch at the last evaluation. */
    final double[] amps;

    /** Conductances after {@link #linearise} or {@link #guess}, by {@link Topology#slot}. */
    final double[] siemens;

    /** The factors of what is left of the network. */
    final StarMesh mesh;

    NodalEquations(Topology topology, BranchEnds ends, BranchLaw[] laws) {
        int count = laws.length;
        this.topology = topology;
        reference = topology.steps();
        from = ends.from;
        to = ends.to;
        slot = ends.slot;
        this.laws = laws.clone();
        conducts = new boolean[count];
        place = new int[count];
        islands = new Islands(reference);
        mesh = new StarMesh(topology);
        resistances = new Resistances(topology, mesh, ends);
        iterated = new boolean[count];
        curves = new Curves(count);
        converter = new int[count];
        emfs = new Emfs(laws, reference + 1);
        amps = new double[count];
        siemens = new double[topology.slots()];
        Arrays.stream(laws).forEach(this::requireOutput);
    }

    BranchLaw law(int branch) {
        BranchChecks.index("branch", branch, laws.length);
        return laws[branch];
    }

    BranchLaw[] laws() {
        return laws.clone();
    }

    /** Sets a law; whether that changed anything. */
    boolean law(int branch, BranchLaw law) {
        BranchChecks.index("branch", branch, laws.length);
        if (laws[branch] == law || laws[branch].equals(law)) {
            return false;
        }
        requireOutput(law);
        if (!replaced(branch, laws[branch], law)) {
            lawsChanged = true;
        }
        laws[branch] = law;
        emfs.set(branch, law);
        return true;
    }

    /** Swaps one law for another of the same sort in place, as almost every change is. */
    private boolean replaced(int branch, BranchLaw old, BranchLaw law) {
        boolean suits = iterated[branch] ? law.linear() == old.linear() : resists(law);
        boolean alike = suits && law.conducts() && conducts[branch];
        boolean converts = law instanceof ConverterInput || old instanceof ConverterInput;
        if (lawsChanged || !alike || converts) {
            return false;
        }
        if (iterated[branch]) {
            curves.set(place[branch], law);
            sourcesChanged |= law.linear() && law.siemensAt(0.0, 0.0) != old.siemensAt(0.0, 0.0);
        } else {
            resistances.set(place[branch], law.siemensAt(0.0, 0.0));
        }
        return true;
    }

    private void requireOutput(BranchLaw law) {
        if (law instanceof ConverterInput input) {
            BranchChecks.index("output branch", input.outputBranch(), laws.length);
        }
    }

    /** Takes over new laws; whether the conductances that laws alone decide are new. */
    boolean refresh() {
        if (lawsChanged) {
            sort();
        }
        if (pathsChanged) {
            pathsChanged = false;
            islands.find(from, to, conducts, topology.netAt);
        }
        boolean renewed = sourcesChanged;
        sourcesChanged = false;
        return resistances.reduce(firstIterated, islands) || renewed;
    }

    private void sort() {
        lawsChanged = false;
        resistances.clear();
        straightThroughout = true;
        curves.clear();
        converters = 0;
        firstIterated = reference;
        findIterated();
        for (int b = 0; b < laws.length; b++) {
            BranchLaw law = laws[b];
            boolean joins = law.conducts();
            pathsChanged |= joins != conducts[b];
            conducts[b] = joins;
            if (!joins) {
                amps[b] = 0.0;
            } else if (iterated[b]) {
                firstIterated = Math.min(firstIterated, Math.min(from[b], to[b]));
                straightThroughout &= law.linear();
                place[b] = curves.add(b, law);
                if (law instanceof ConverterInput) {
                    converter[converters++] = place[b];
                }
            } else {
                place[b] = resistances.add(b, law.siemensAt(0.0, 0.0));
            }
        }
    }

    /** All but resistances, and what a converter delivers through, whose current it must know. */
    private void findIterated() {
        for (int b = 0; b < laws.length; b++) {
            iterated[b] = !resists(laws[b]);
        }
        for (BranchLaw law : laws) {
            if (law instanceof ConverterInput input) {
                iterated[input.outputBranch()] = true;
            }
        }
    }

    private static boolean resists(BranchLaw law) {
        return law.linear() && law.emfVolts() == 0.0;
    }

    /** Sets how much of what they want the loads with a floor draw, above 0; 1 as it is. */
    void loadShare(double share) {
        loadShare = share;
    }

    /** Adds a leak (S) to every law where it is flat; 0 for the laws as they are. */
    void soften(double leakSiemens) {
        extraLeak = leakSiemens;
    }

    boolean straightThroughout() {
        return straightThroughout;
    }

    /** Works out every branch current and what each net is left with (A). */
    void evaluate(double[] volts, double[] excess) {
        carryStraight(volts, excess);
        evaluateCurved(volts, excess);
    }

    private void carryStraight(double[] volts, double[] excess) {
        Arrays.fill(excess, 0.0);
        for (int p = 0; p < islands.pins(); p++) {
            excess[islands.pinned(p)] = -PIN_SIEMENS * volts[islands.pinned(p)];
        }
        resistances.carry(volts, amps, excess);
    }

    /** Works out what each net left is left with (A), and the currents of branches that bend. */
    void evaluateLeft(double[] volts, double[] excess) {
        resistances.leave(volts, excess);
        evaluateCurved(volts, excess);
        excess[reference] = 0.0;
    }

    /** Finds the voltages eliminated ahead, then straight currents and what nets are left with. */
    void expand(double[] volts, double[] excess) {
        mesh.expand(volts);
        carryStraight(volts, excess);
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            carry(b, amps[b], excess);
        }
    }

    /** Eliminates nothing ahead until slopes are new. */
    void keepAll() {
        resistances.keepAll();
    }

    private void evaluateCurved(double[] volts, double[] excess) {
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            double across = volts[from[b]] - volts[to[b]];
            carry(b, share(c) * curves.amps(c, across), excess);
        }
        if (extraLeak > 0.0) {
            leak(volts, excess);
        }
        for (int k = 0; k < converters; k++) {
            int c = converter[k];
            ConverterInput input = (ConverterInput) curves.law(c);
            int b = curves.branch(c);
            double idle = amps[b];
            double across = volts[from[b]] - volts[to[b]];
            double all = loadShare * input.ampsAt(across, delivered(input, volts));
            carry(b, all - idle, excess);
            amps[b] = all;
        }
    }

    private void leak(double[] volts, double[] excess) {
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            double more = extraLeak * curves.beyond(c, volts[from[b]] - volts[to[b]]);
            excess[from[b]] -= more;
            excess[to[b]] += more;
        }
    }

    private void carry(int branch, double current, double[] excess) {
        amps[branch] = current;
        excess[from[branch]] -= current;
        excess[to[branch]] += current;
    }

    /** Power that the output of a converter delivers at the last evaluated voltages (W). */
    double delivered(ConverterInput input, double[] volts) {
        int out = input.outputBranch();
        return laws[out].canBeOutput() ? -amps[out] * (volts[from[out]] - volts[to[out]]) : 0.0;
    }

    /**
     * Slopes at the last evaluated voltages; tamed, a load that draws more at less voltage counts
     * as the resistance that it amounts to, which keeps the matrix positive definite.
     */
    void linearise(double[] volts, boolean tamed) {
        resistances.copySiemens(siemens);
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            double slope = slope(c, volts);
            curves.use(c, slope);
            if (tamed && slope <= 0.0) {
                slope = amps[b] / (volts[from[b]] - volts[to[b]]);
            }
            siemens[slot[b]] += slope;
        }
    }

    private double share(int c) {
        return loadShare == 1.0 || curves.floorVolts(c) == 0.0 ? 1.0 : loadShare;
    }

    private double slope(int c, double[] volts) {
        int b = curves.branch(c);
        double across = volts[from[b]] - volts[to[b]];
        double own = share(c) * curves.siemens(c, across, amps[b]);
        return extraLeak > 0.0 && curves.beyond(c, across) != 0.0 ? own + extraLeak : own;
    }

    /** Whether the slopes used last are still of the right size at these voltages. */
    boolean stillLinearised(double[] volts) {
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            double used = curves.usedSiemens(c);
            if (!(Math.abs(slope(c, volts) - used) <= 0.5 * Math.abs(used))) {
                return false;
            }
        }
        return true;
    }

    /** Draws straight lines where branches are likely to be when nothing is known. */
    void drawLikely() {
        emfs.find(islands, from);
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            double highest = emfs.highestIn(islands.islandOf(from[curves.branch(c)]));
            curves.draw(c, curves.law(c).likelyVolts(highest));
        }
    }

    /**
     * Draws the next lines where the last ones led to.
     *
     * @return how far the farthest of them moved (V)
     */
    double drawNext(double[] volts) {
        double most = 0.0;
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            most = Math.max(most, curves.drawNext(c, volts[from[b]] - volts[to[b]], amps[b]));
        }
        return most;
    }

    /** Conductances and injected currents of the straight network of the lines drawn. */
    void guess(double[] injected) {
        resistances.copySiemens(siemens);
        Arrays.fill(injected, 0.0);
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            double across = curves.drawnAt(c);
            double current = share(c) * curves.amps(c, across);
            double slope = share(c) * curves.siemens(c, across, current);
            if (slope <= 0.0) {
                slope = current / across;
            }
            siemens[slot[b]] += slope;
            curves.use(c, slope);
            carry(b, current - slope * across, injected);
        }
    }

    /** No two nets of a passive network with these sources can be further apart (V). */
    double widestVolts() {
        return emfs.sum();
    }

    /**
     * Which branches make a better point thinkable: loads that live below their floor without being
     * simply dead, channels at their limit. One number a set, 0 for none.
     */
    long doubts(double[] volts) {
        long set = 0;
        int count = curves.count();
        for (int c = 0; c < count; c++) {
            int b = curves.branch(c);
            double across = volts[from[b]] - volts[to[b]];
            double floor = curves.floorVolts(c);
            if ((across < floor && across > DEAD * floor)
                    || (curves.law(c) instanceof LimitedConductor && slope(c, volts) < 1e-6)) {
                set = 31 * set + b + 1;
            }
        }
        return set;
    }

    int branches() {
        return laws.length;
    }

    Islands islands() {
        return islands;
    }
}
