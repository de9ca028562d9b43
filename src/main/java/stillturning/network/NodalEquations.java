package stillturning.network;

import java.util.Arrays;
import stillturning.network.law.BranchChecks;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.LimitedConductor;

/**
 * Kirchhoff's current law at every net but the reference, in elimination order: what is left over
 * at given voltages, and its slopes. Branches with straight laws are kept as plain numbers, open
 * ones not at all.
 */
final class NodalEquations {
    /** Ties a floating island's lowest net to 0 V; carries no current once the island balances. */
    static final double PIN_SIEMENS = 1.0;

    /** A load below this part of its floor is off rather than sagging. */
    private static final double DEAD = 0.01;

    private final int reference;
    private final int[] from;
    private final int[] to;
    private final int[] slot;
    private final int[] netAt;
    private final BranchLaw[] laws;
    private final boolean[] conducts;
    private final int[] place;
    private final Islands islands;

    private final int[] straight;
    private final double[] straightSiemens;
    private final double[] straightEmf;
    private int straights;

    private final int[] curved;
    private final BranchLaw[] curvedLaw;
    private final double[] curvedSiemens;
    private int curves;

    private final int[] converter;
    private int converters;

    private final double[] emf;
    private final double[] fixedSiemens;
    private boolean lawsChanged = true;
    private boolean fixedChanged = true;
    private boolean pathsChanged = true;
    private double extraLeak;
    private double loadShare = 1.0;

    /** Current of each branch at the last evaluation. */
    final double[] amps;

    /** Conductances after {@link #linearise} or {@link #guess}, by {@link Topology#slot}. */
    final double[] siemens;

    NodalEquations(Topology topology, int[] from, int[] to, BranchLaw[] laws) {
        int count = laws.length;
        reference = topology.steps();
        this.from = new int[count];
        this.to = new int[count];
        slot = new int[count];
        this.laws = laws.clone();
        netAt = new int[topology.nets()];
        for (int net = 0; net < netAt.length; net++) {
            netAt[topology.position[net]] = net;
        }
        for (int b = 0; b < count; b++) {
            if (!topology.accommodates(from[b], to[b])) {
                throw new IllegalArgumentException(
                        "branch %d joins nets %d and %d, which the topology does not foresee; analyse it anew"
                                .formatted(b, from[b], to[b]));
            }
            this.from[b] = topology.position[from[b]];
            this.to[b] = topology.position[to[b]];
            slot[b] = topology.slot(from[b], to[b]);
            requireOutput(this.laws[b]);
        }
        conducts = new boolean[count];
        place = new int[count];
        islands = new Islands(reference);
        straight = new int[count];
        straightSiemens = new double[count];
        straightEmf = new double[count];
        curved = new int[count];
        curvedLaw = new BranchLaw[count];
        curvedSiemens = new double[count];
        converter = new int[count];
        emf = new double[reference + 1];
        amps = new double[count];
        siemens = new double[topology.slots()];
        fixedSiemens = new double[topology.slots()];
    }

    BranchLaw law(int branch) {
        BranchChecks.index("branch", branch, laws.length);
        return laws[branch];
    }

    /** Sets a law; whether that changed anything. */
    boolean law(int branch, BranchLaw law) {
        BranchChecks.index("branch", branch, laws.length);
        if (laws[branch].equals(law)) {
            return false;
        }
        requireOutput(law);
        if (!replaced(branch, laws[branch], law)) {
            lawsChanged = true;
        }
        laws[branch] = law;
        return true;
    }

    /** Swaps one law for another of the same sort in place, as almost every change is. */
    private boolean replaced(int branch, BranchLaw old, BranchLaw law) {
        boolean alike = law.linear() == old.linear() && law.conducts() && conducts[branch];
        boolean converts = law instanceof ConverterInput || old instanceof ConverterInput;
        if (lawsChanged || !alike || converts) {
            return false;
        }
        int at = place[branch];
        if (law.linear()) {
            double slope = law.siemensAt(0.0, 0.0);
            fixedChanged |= slope != straightSiemens[at];
            straightSiemens[at] = slope;
            straightEmf[at] = law.emfVolts();
        } else {
            curvedLaw[at] = law;
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
            lawsChanged = false;
            fixedChanged = true;
            sort();
        }
        if (pathsChanged) {
            pathsChanged = false;
            islands.find(from, to, conducts, netAt);
        }
        boolean renewed = fixedChanged;
        if (renewed) {
            fixedChanged = false;
            fix();
        }
        return renewed;
    }

    private void sort() {
        straights = 0;
        curves = 0;
        converters = 0;
        for (int b = 0; b < laws.length; b++) {
            BranchLaw law = laws[b];
            boolean joins = law.conducts();
            pathsChanged |= joins != conducts[b];
            conducts[b] = joins;
            if (!joins) {
                amps[b] = 0.0;
            } else if (law.linear()) {
                place[b] = straights;
                straight[straights] = b;
                straightSiemens[straights] = law.siemensAt(0.0, 0.0);
                straightEmf[straights++] = law.emfVolts();
            } else {
                place[b] = curves;
                curved[curves] = b;
                curvedLaw[curves++] = law;
                if (law instanceof ConverterInput) {
                    converter[converters++] = curves - 1;
                }
            }
        }
    }

    /** Sets how much of what they want the loads with a floor draw, above 0; 1 as it is. */
    void loadShare(double share) {
        loadShare = share;
    }

    /** Adds a leak (S) to every law where it is flat; 0 for the laws as they are. */
    void soften(double leakSiemens) {
        extraLeak = leakSiemens;
    }

    private double beyond(BranchLaw law, double across) {
        double below = Math.min(0.0, across - law.flatBelowVolts());
        return below + Math.max(0.0, across - law.flatAboveVolts());
    }

    boolean straightThroughout() {
        return curves == 0;
    }

    /** Works out every branch current and what each net is left with (A). */
    void evaluate(double[] volts, double[] excess) {
        Arrays.fill(excess, 0.0);
        for (int p = 0; p < islands.pins(); p++) {
            excess[islands.pinned(p)] = -PIN_SIEMENS * volts[islands.pinned(p)];
        }
        for (int s = 0; s < straights; s++) {
            int b = straight[s];
            double across = volts[from[b]] - volts[to[b]];
            carry(b, straightSiemens[s] * (across - straightEmf[s]), excess);
        }
        for (int c = 0; c < curves; c++) {
            int b = curved[c];
            double across = volts[from[b]] - volts[to[b]];
            carry(b, share(c) * curvedLaw[c].ampsAt(across), excess);
        }
        if (extraLeak > 0.0) {
            leak(volts, excess);
        }
        for (int k = 0; k < converters; k++) {
            int c = converter[k];
            ConverterInput input = (ConverterInput) curvedLaw[c];
            int b = curved[c];
            double idle = amps[b];
            double across = volts[from[b]] - volts[to[b]];
            double all = loadShare * input.ampsAt(across, delivered(input, volts));
            carry(b, all - idle, excess);
            amps[b] = all;
        }
    }

    private void leak(double[] volts, double[] excess) {
        for (int c = 0; c < curves; c++) {
            int b = curved[c];
            double more = extraLeak * beyond(curvedLaw[c], volts[from[b]] - volts[to[b]]);
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
        return laws[out] instanceof ConverterInput
                ? 0.0
                : -amps[out] * (volts[from[out]] - volts[to[out]]);
    }

    /** Adds up the conductances that laws alone decide. */
    private void fix() {
        Arrays.fill(fixedSiemens, 0.0);
        for (int p = 0; p < islands.pins(); p++) {
            fixedSiemens[islands.pinned(p)] = PIN_SIEMENS;
        }
        for (int s = 0; s < straights; s++) {
            fixedSiemens[slot[straight[s]]] += straightSiemens[s];
        }
    }

    /**
     * Slopes at the last evaluated voltages.
     *
     * @param tamed whether a load that draws more at less voltage counts as the resistance it
     *     amounts to, which keeps the matrix positive definite
     */
    void linearise(double[] volts, boolean tamed) {
        System.arraycopy(fixedSiemens, 0, siemens, 0, siemens.length);
        for (int c = 0; c < curves; c++) {
            int b = curved[c];
            double slope = slope(c, volts);
            curvedSiemens[c] = slope;
            if (tamed && slope <= 0.0) {
                slope = amps[b] / (volts[from[b]] - volts[to[b]]);
            }
            siemens[slot[b]] += slope;
        }
    }

    private double share(int c) {
        return loadShare == 1.0 || curvedLaw[c].floorVolts() == 0.0 ? 1.0 : loadShare;
    }

    private double slope(int c, double[] volts) {
        int b = curved[c];
        double across = volts[from[b]] - volts[to[b]];
        double own = share(c) * curvedLaw[c].siemensAt(across, amps[b]);
        return extraLeak > 0.0 && beyond(curvedLaw[c], across) != 0.0 ? own + extraLeak : own;
    }

    /** Whether the slopes used last are still of the right size at these voltages. */
    boolean stillLinearised(double[] volts) {
        for (int c = 0; c < curves; c++) {
            double used = curvedSiemens[c];
            if (!(Math.abs(slope(c, volts) - used) <= 0.5 * Math.abs(used))) {
                return false;
            }
        }
        return true;
    }

    /** Conductances and injected currents of a straight network that resembles this one. */
    void guess(double[] injected) {
        highestEmf();
        System.arraycopy(fixedSiemens, 0, siemens, 0, siemens.length);
        Arrays.fill(injected, 0.0);
        for (int s = 0; s < straights; s++) {
            carry(straight[s], -straightSiemens[s] * straightEmf[s], injected);
        }
        for (int c = 0; c < curves; c++) {
            int b = curved[c];
            double across = curvedLaw[c].likelyVolts(emf[islands.islandOf(from[b])]);
            double current = share(c) * curvedLaw[c].ampsAt(across);
            double slope = share(c) * curvedLaw[c].siemensAt(across, current);
            if (slope <= 0.0) {
                slope = current / across;
            }
            siemens[slot[b]] += slope;
            carry(b, current - slope * across, injected);
        }
    }

    private void highestEmf() {
        Arrays.fill(emf, 0.0);
        for (int b = 0; b < laws.length; b++) {
            int island = islands.islandOf(from[b]);
            emf[island] = Math.max(emf[island], laws[b].emfVolts());
        }
    }

    /** No two nets of a passive network with these sources can be further apart (V). */
    double widestVolts() {
        double sum = 0.0;
        for (BranchLaw law : laws) {
            sum += law.emfVolts();
        }
        return sum;
    }

    /**
     * Which branches make a better point thinkable: loads that live below their floor without being
     * simply dead, channels at their limit. One number a set, 0 for none.
     */
    long doubts(double[] volts) {
        long set = 0;
        for (int c = 0; c < curves; c++) {
            int b = curved[c];
            double across = volts[from[b]] - volts[to[b]];
            double floor = curvedLaw[c].floorVolts();
            boolean sagged = across < floor && across > DEAD * floor;
            if (sagged || (curvedLaw[c] instanceof LimitedConductor && slope(c, volts) < 1e-6)) {
                set = 31 * set + b + 1;
            }
        }
        return set;
    }

    int branches() {
        return laws.length;
    }

    /** Elimination step of the net where a branch starts. */
    int from(int branch) {
        return from[branch];
    }

    /** Elimination step of the net where a branch ends. */
    int to(int branch) {
        return to[branch];
    }

    /** Names the net with the largest leftover and its strongest branch. */
    NoOperatingPoint failure(double[] excess) {
        int worst = 0;
        for (int k = 0; k < reference; k++) {
            if (!(Math.abs(excess[k]) <= Math.abs(excess[worst]))) {
                worst = k;
            }
        }
        int strongest = -1;
        for (int b = 0; b < laws.length; b++) {
            boolean there = from[b] == worst || to[b] == worst;
            if (there && (strongest < 0 || Math.abs(amps[b]) > Math.abs(amps[strongest]))) {
                strongest = b;
            }
        }
        return new NoOperatingPoint(netAt[worst], strongest, excess[worst]);
    }

    Islands islands() {
        return islands;
    }
}
