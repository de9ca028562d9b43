package stillturning.story.device.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stillturning.network.NoOperatingPoint;
import stillturning.network.NodalSolver;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Situation;

/**
 * Which alternators the circuit steadies.
 *
 * <p>What an alternator gives too much must get from its output back to its case until its field
 * has followed. Ways are metal, diodes forwards, batteries that can be charged, and capacitors; not
 * loads, which answer the wrong way round, nor converters, which draw what they deliver, nor other
 * alternators, whose fields are as slow. Only the change counts, so no source has a voltage here.
 * What results is the incremental resistance seen from the alternator; {@link
 * Generator#steadyingOhms} says how large it may be.
 *
 * <p>It hangs on nothing but which branches conduct, dead ends left out, and is computed only once
 * for each set of them.
 */
final class Steadying {

    /** What is left of the voltage where the network has half the largest resistance. */
    private static final double DOUBTED_FROM = 1.0 / 3;

    /** Where it has the largest, and where rounding does not say that it has more. */
    private static final double STEADIED = 0.5 + 1e-9;

    /** Where it has twice that. */
    private static final double DOUBTED_TO = 2.0 / 3;

    private final BranchLayout layout;
    private final Situation now;
    private final Set<String> doubtful = new LinkedHashSet<>();
    private final List<Way> ways = new ArrayList<>();
    private final List<Machine> machines = new ArrayList<>();
    private final boolean[] conducting;

    /** What conducts and is no dead end. */
    private final boolean[] counts;

    /** How many ends of such, and of alternators, each net has. */
    private final int[] ends;

    private int askedAt = -1;

    /**
     * Something that a change of current may pass.
     *
     * @param stored its law if it takes up the change by itself; none if it only passes it on
     */
    private record Way(int branch, Optional<BranchLaw> stored) {}

    /** A law between two nets. */
    private record Tie(int from, int to, BranchLaw law) {}

    /** All that steadying hangs on: what conducts, and which alternators push. */
    private record State(List<Tie> ties, List<Tie> pushing) {}

    /**
     * An alternator, and what takes its place: as much voltage as moves its whole output through
     * twice the largest resistance. Half of it is left where the network has just that resistance.
     */
    private static final class Machine {
        private final Seat seat;
        private final double volts;
        private final BranchLaw pushing;
        private boolean steadied;

        Machine(Seat seat, Generator generator, double factor) {
            this.seat = seat;
            double ohms = factor * generator.steadyingOhms();
            volts = 2 * ohms * generator.output().largestAmps();
            pushing = new SourceBehindOhms(volts, ohms);
        }
    }

    Steadying(BranchLayout layout, Situation now) {
        this.layout = layout;
        this.now = now;
        layout.seats.forEach(this::add);
        conducting = new boolean[ways.size()];
        counts = new boolean[ways.size()];
        ends = new int[layout.topology.nets()];
    }

    private void add(Seat seat) {
        Element element = seat.placed().element();
        OptionalDouble ohms = element.surplusOhms();
        if (ohms.isPresent()) {
            BranchLaw stored = new Resistive(ohms.getAsDouble());
            ways.add(new Way(seat.branch(), Optional.of(stored)));
            return;
        }
        switch (element.role()) {
            case PATH, ELECTRONICS -> ways.add(new Way(seat.branch(), Optional.empty()));
            case GENERATOR -> machines.add(machine(seat, (Generator) element));
            case BATTERY, CAPACITOR, LOAD, COIL, CONVERTER -> {}
        }
    }

    private Machine machine(Seat seat, Generator generator) {
        return new Machine(seat, generator, now.setting.laws().steadying());
    }

    /**
     * Alternators that half or twice the largest resistance would have made out otherwise, at any
     * instant until now.
     */
    Set<String> doubtful() {
        return doubtful;
    }

    /** Whether the alternator on a branch is steadied at this instant. */
    boolean at(int branch) {
        if (askedAt != now.layings) {
            boolean never = askedAt < 0;
            askedAt = now.layings;
            if (changed() || never) {
                ask();
            }
        }
        for (Machine machine : machines) {
            if (machine.seat.branch() == branch) {
                return machine.steadied;
            }
        }
        throw new IllegalArgumentException("no alternator on branch " + branch);
    }

    private boolean changed() {
        boolean changed = false;
        for (int i = 0; i < conducting.length; i++) {
            boolean conducts = now.solver.law(ways.get(i).branch()).takesUp();
            changed |= conducts != conducting[i];
            conducting[i] = conducts;
        }
        return changed;
    }

    /** Nothing flows into a way that nothing but one end of it joins to the rest. */
    private void leaveOutDeadEnds() {
        System.arraycopy(conducting, 0, counts, 0, counts.length);
        Arrays.fill(ends, 0);
        machines.forEach(machine -> join(machine.seat.branch(), 1));
        for (int i = 0; i < counts.length; i++) {
            if (counts[i]) {
                join(ways.get(i).branch(), 1);
            }
        }
        boolean less = true;
        while (less) {
            less = false;
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] && isDeadEnd(ways.get(i).branch())) {
                    counts[i] = false;
                    join(ways.get(i).branch(), -1);
                    less = true;
                }
            }
        }
    }

    private void join(int branch, int times) {
        ends[layout.from[branch]] += times;
        ends[layout.to[branch]] += times;
    }

    private boolean isDeadEnd(int branch) {
        return ends[layout.from[branch]] == 1 || ends[layout.to[branch]] == 1;
    }

    private void ask() {
        leaveOutDeadEnds();
        State state = new State(ties(), machines.stream().map(this::pushing).toList());
        List<Double> left = layout.answers.about(state, this::left);
        for (int i = 0; i < machines.size(); i++) {
            Machine machine = machines.get(i);
            double share = left.get(i);
            machine.steadied = share <= STEADIED;
            if (share > DOUBTED_FROM && share <= DOUBTED_TO) {
                doubtful.add(machine.seat.placed().part());
            }
        }
    }

    private List<Tie> ties() {
        List<Tie> ties = new ArrayList<>();
        for (int i = 0; i < conducting.length; i++) {
            if (counts[i]) {
                Way way = ways.get(i);
                ties.add(tie(way.branch(), law(way)));
            }
        }
        return ties;
    }

    private Tie pushing(Machine machine) {
        return tie(machine.seat.branch(), machine.pushing);
    }

    private Tie tie(int branch, BranchLaw law) {
        return new Tie(layout.from[branch], layout.to[branch], law);
    }

    private BranchLaw law(Way way) {
        Optional<BranchLaw> stored = way.stored();
        return stored.isPresent() ? stored.get() : now.solver.law(way.branch());
    }

    /** What each alternator is left with of its voltage. */
    private List<Double> left() {
        BranchLaw aside = Open.CIRCUIT;
        BranchLaw[] laws = new BranchLaw[layout.from.length];
        Arrays.fill(laws, aside);
        for (int i = 0; i < conducting.length; i++) {
            if (counts[i]) {
                laws[ways.get(i).branch()] = law(ways.get(i));
            }
        }
        NodalSolver changes = new NodalSolver(layout.topology, layout.from, layout.to, laws);
        List<Double> left = new ArrayList<>();
        for (Machine machine : machines) {
            changes.law(machine.seat.branch(), machine.pushing);
            left.add(left(machine, changes));
            changes.law(machine.seat.branch(), aside);
        }
        return left;
    }

    private static double left(Machine machine, NodalSolver changes) {
        try {
            changes.solve();
        } catch (NoOperatingPoint e) {
            throw new IllegalStateException(
                    "what steadies " + machine.seat.placed().part() + " cannot be computed", e);
        }
        double volts =
                changes.volts(machine.seat.placed().from())
                        - changes.volts(machine.seat.placed().to());
        return volts / machine.volts;
    }
}
