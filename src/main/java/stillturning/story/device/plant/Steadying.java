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
 * <p>It hangs on nothing but which branches conduct, and is computed anew only when that changes.
 */
final class Steadying {

    /** Takes no part in a change. */
    private static final BranchLaw ASIDE = new Open();

    /** What is left of the voltage where the network has half the largest resistance. */
    private static final double DOUBTED_FROM = 1.0 / 3;

    /** The same where it has twice that. */
    private static final double DOUBTED_TO = 2.0 / 3;

    private final Situation now;
    private final Set<String> doubtful = new LinkedHashSet<>();
    private final List<Way> ways = new ArrayList<>();
    private final List<Machine> machines = new ArrayList<>();
    private final boolean[] conducting;
    private final NodalSolver changes;
    private int askedAt = -1;

    /**
     * Something that a change of current may pass.
     *
     * @param stored its law if it takes up the change by itself; none if it only passes it on
     */
    private record Way(int branch, Optional<BranchLaw> stored) {}

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
        this.now = now;
        layout.seats.forEach(this::add);
        conducting = new boolean[ways.size()];
        BranchLaw[] laws = new BranchLaw[layout.from.length];
        Arrays.fill(laws, ASIDE);
        changes = new NodalSolver(layout.topology, layout.from, layout.to, laws);
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
                machines.forEach(this::ask);
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
            Way way = ways.get(i);
            BranchLaw law = now.solver.law(way.branch());
            boolean conducts = law.takesUp();
            if (conducts != conducting[i]) {
                changed = true;
                conducting[i] = conducts;
                changes.law(way.branch(), conducts ? way.stored().orElse(law) : ASIDE);
            }
        }
        return changed;
    }

    private void ask(Machine machine) {
        int branch = machine.seat.branch();
        changes.law(branch, machine.pushing);
        try {
            changes.solve();
        } catch (NoOperatingPoint e) {
            throw new IllegalStateException(
                    "what steadies " + machine.seat.placed().part() + " cannot be computed", e);
        }
        double left =
                changes.volts(machine.seat.placed().from())
                        - changes.volts(machine.seat.placed().to());
        machine.steadied = left <= machine.volts / 2;
        if (left > DOUBTED_FROM * machine.volts && left <= DOUBTED_TO * machine.volts) {
            doubtful.add(machine.seat.placed().part());
        }
        changes.law(branch, ASIDE);
    }
}
