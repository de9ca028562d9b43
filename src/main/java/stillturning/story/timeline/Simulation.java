package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.network.NoOperatingPoint;
import stillturning.story.UntoldStory;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.battery.CellDevice;
import stillturning.story.device.battery.Outlook;
import stillturning.story.device.battery.Store;
import stillturning.story.device.battery.Warmth;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.stride.Advance;
import stillturning.story.timeline.stride.DipCheck;
import stillturning.story.timeline.stride.Integrator;
import stillturning.story.timeline.stride.MarginTable;
import stillturning.story.timeline.stride.StepLimits;

/**
 * Jumps from event to event: settles everything that happens at one instant, then carries charges
 * and heats forward to the next.
 *
 * <p>Order within an instant: margins crossed first, in the order of the parts, then deadlines in
 * the same order; then the network is solved again, until nothing more happens.
 */
final class Simulation {

    /**
     * A charge that moves slower than this a second stands still: full to empty in 30 years; and a
     * battery whose temperature moves by less than 0.1 mK a second, within 0.4 K of where it
     * settles.
     */
    static final double STANDSTILL = 1e-9;

    /** Steps that no story takes: the longest known take some thousands. */
    private static final int MOST_STEPS = 50_000;

    private final Plant plant;
    private final Situation now;
    private final Map<String, Device> byName;

    /** All to which anything can happen, and those of them that may have a deadline. */
    private final Device[] devices;

    private final Device[] waiting;
    private final BranchDevice[] placings;
    private final Store[] stores;
    private final double[] setOutAt;
    private final Stateful[] heats;
    private final List<Stateful> moving = new ArrayList<>();
    private final List<Store> standing = new ArrayList<>();
    private final MarginTable margins;
    private final Chatter chatter;
    private final Integrator integrator;
    private final Advance advance;

    private int steps;

    /** Whether something has happened since heats were told; what comes first always counts. */
    private boolean eventful = true;

    /** Whether only charges and heats have moved on since an instant was settled. */
    private boolean onlyAdvanced;

    /** Earliest deadline when the last instant was settled (s), and whether one is soon. */
    private double earliest;

    private boolean somethingQuickWaits;

    /** Whether nothing happened at the last instant that was settled. */
    private boolean calm;

    Simulation(
            Plant plant,
            EngineAndPilot engineAndPilot,
            Situation now,
            EnergyMeter meter,
            StepLimits stride) {
        this.plant = plant;
        this.now = now;
        byName = new LinkedHashMap<>(plant.devices());
        byName.putAll(engineAndPilot.devices());
        List<String> acting = new ArrayList<>();
        List<Device> all = new ArrayList<>();
        List<Device> waits = new ArrayList<>();
        for (Map.Entry<String, Device> entry : byName.entrySet()) {
            Device device = entry.getValue();
            if (device.acts()) {
                acting.add(entry.getKey());
                all.add(device);
                if (device.waits()) {
                    waits.add(device);
                }
            }
        }
        devices = all.toArray(Device[]::new);
        waiting = waits.toArray(Device[]::new);
        placings = layStanding();
        stores = plant.stores().toArray(Store[]::new);
        setOutAt = new double[stores.length];
        heats = plant.heats().toArray(Stateful[]::new);
        chatter = new Chatter(acting.toArray(String[]::new), devices, now);
        margins = new MarginTable(devices, () -> now.solver);
        DipCheck dips = new DipCheck(margins, stride.pair());
        integrator =
                new Integrator(
                        stride.pair(),
                        stores.length + heats.length,
                        STANDSTILL,
                        this::solveOnTheWay,
                        meter,
                        dips);
        advance = new Advance(integrator, dips, stride);
    }

    /** Lays down the laws that never change. Returns what has others. */
    private BranchDevice[] layStanding() {
        List<BranchDevice> changing = new ArrayList<>();
        for (BranchDevice device : plant.branchDevices()) {
            if (device.changesLaw()) {
                changing.add(device);
            } else {
                now.solver.law(device.branch(), device.law());
            }
        }
        return changing.toArray(BranchDevice[]::new);
    }

    Map<String, Device> devices() {
        return byName;
    }

    /** The device of this name; for what only a fault has, the first of the same part. */
    Optional<Device> likeness(String name) {
        Optional<Device> same = Optional.ofNullable(byName.get(name));
        String part = same.isPresent() ? "" : name.substring(0, name.indexOf('/') + 1);
        return part.isEmpty()
                ? same
                : byName.entrySet().stream()
                        .filter(e -> e.getKey().startsWith(part))
                        .map(Map.Entry::getValue)
                        .findFirst();
    }

    /** Lets delays run out with charges and heats standing still, as before a flight. */
    void comeToRest() throws UntoldStory {
        settle();
        while (earliest < Device.NO_DEADLINE) {
            now.seconds = earliest;
            settle();
        }
        for (Store store : stores) {
            store.begin();
        }
    }

    /** Whether nothing more will ever happen, or the horizon is reached. */
    boolean over(double horizonSeconds, boolean engineStopped) throws UntoldStory {
        if (now.seconds >= horizonSeconds || (moving.isEmpty() && earliest == Device.NO_DEADLINE)) {
            return true;
        }
        if (earliest < Device.NO_DEADLINE) {
            return false;
        }
        boolean filling = true;
        boolean draining = true;
        for (Stateful state : moving) {
            boolean charge = state instanceof CellDevice;
            filling &= state instanceof Warmth || (charge && state.perSecond() > 0);
            draining &= state instanceof Store && state.perSecond() < 0;
        }
        return (filling && nothingHappensOnTheWayToFull()) || (engineStopped && draining);
    }

    /** Whether only a pilot or the slow change of charges can still bring something about. */
    boolean quiet() {
        for (Stateful state : moving) {
            if (state.quick()) {
                return false;
            }
        }
        return !somethingQuickWaits;
    }

    /**
     * Charging moves every voltage one way, and its losses only fall, so what has not happened at
     * its end, with every battery as cold or as warm as it may yet become, never does.
     */
    private boolean nothingHappensOnTheWayToFull() throws UntoldStory {
        List<Outlook> outlooks = plant.cells().stream().map(Outlook::of).toList();
        boolean nothing = true;
        for (boolean warm : new boolean[] {false, true}) {
            outlooks.forEach(outlook -> outlook.end(warm));
            resolve();
            nothing &= margins.lowest() >= 0;
        }
        outlooks.forEach(Outlook::back);
        resolve();
        return nothing;
    }

    /** Lets everything happen that happens at this instant. */
    void settle() throws UntoldStory {
        chatter.newInstant();
        boolean changed = !onlyAdvanced;
        onlyAdvanced = false;
        calm = true;
        do {
            if (changed) {
                layLaws();
            }
            solve();
            if (changed) {
                margins.renew();
            }
            assert changed || margins.isCurrent();
            boolean due = changed || earliest <= now.seconds;
            boolean crossed = cross();
            changed = ((due || crossed) && expire()) || crossed;
            eventful |= changed;
            calm &= !changed;
        } while (changed);
        tellHeats();
        findMoving();
        findDeadlines();
    }

    private void layLaws() {
        now.layings++;
        for (BranchDevice placing : placings) {
            now.solver.law(placing.branch(), placing.law());
        }
    }

    private void findDeadlines() {
        earliest = Device.NO_DEADLINE;
        somethingQuickWaits = false;
        for (Device device : waiting) {
            double deadline = device.deadline();
            if (deadline < Device.NO_DEADLINE) {
                earliest = Math.min(earliest, deadline);
                somethingQuickWaits |= !device.isSlow();
            }
        }
    }

    /** What cools goes on with the current after an event, wherever steps between events end. */
    private void tellHeats() {
        if (eventful) {
            for (Stateful heat : heats) {
                heat.settled();
            }
            eventful = false;
        }
    }

    private boolean cross() throws UntoldStory {
        boolean any = false;
        double[] together = margins.readTogether();
        for (int i = 0; i < devices.length; i++) {
            // what has crossed may have changed the margins of others
            boolean ask = any || Double.isNaN(together[i]);
            if ((ask ? devices[i].margin() : together[i]) < 0) {
                devices[i].cross();
                chatter.flipped(i);
                any = true;
            }
        }
        chatter.calm();
        return any;
    }

    private boolean expire() {
        boolean any = false;
        for (Device device : waiting) {
            if (device.deadline() <= now.seconds) {
                device.expire();
                any = true;
            }
        }
        return any;
    }

    private void findMoving() {
        moving.clear();
        standing.clear();
        for (Store store : stores) {
            if (Math.abs(store.perSecond()) > STANDSTILL) {
                moving.add(store);
            } else {
                standing.add(store);
            }
        }
        for (Stateful heat : heats) {
            if (heat.quick() || Math.abs(heat.perSecond()) > STANDSTILL) {
                moving.add(heat);
            }
        }
    }

    private void solve() throws UntoldStory {
        solveNetwork();
        now.journal.solved();
    }

    private void resolve() throws UntoldStory {
        layStores();
        solveNetwork();
    }

    private void solveNetwork() throws UntoldStory {
        try {
            now.solver.solve();
        } catch (NoOperatingPoint e) {
            throw now.untold(e, plant.partAt(e.branch()));
        }
    }

    /** Moves on to the next event, a deadline or the horizon, or a step of the way there. */
    void advance(double horizonSeconds) throws UntoldStory {
        double limit = Math.min(earliest, horizonSeconds);
        onlyAdvanced = true;
        try {
            if (moving.isEmpty()) {
                integrator.rest(limit - now.seconds);
                now.seconds = limit;
            } else {
                setOut();
                now.seconds = advance.from(now.seconds, limit, moving, standing);
                stepped();
            }
        } catch (NoOperatingPoint e) {
            throw now.untold(e, plant.partAt(e.branch()));
        }
    }

    /**
     * @throws UntoldStory if a state has no value any more, or the steps have no end
     */
    private void stepped() throws UntoldStory {
        steps++;
        for (Stateful state : moving) {
            state.stepped();
            requireFollowed(state);
        }
        for (Stateful state : standing) {
            requireFollowed(state);
        }
    }

    private void requireFollowed(Stateful state) throws UntoldStory {
        if (!Double.isFinite(state.value()) || steps > MOST_STEPS) {
            throw new UntoldStory(
                    "at %s s: charge or heat of %s cannot be followed any further, after %d steps"
                            .formatted(now.seconds, nameOf(state), steps));
        }
    }

    private String nameOf(Stateful state) {
        return byName.entrySet().stream()
                .filter(e -> e.getValue() == state || e.getValue().heats().contains(state))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("a part");
    }

    private void setOut() {
        for (int i = 0; i < stores.length; i++) {
            setOutAt[i] = stores[i].value();
        }
        now.solver.setOut(calm);
    }

    /** Voltages hang on the charges alone, so how far these have come says where to look. */
    private void solveOnTheWay() throws NoOperatingPoint {
        double along = 0;
        for (int i = 0; i < stores.length; i++) {
            along += Math.abs(stores[i].value() - setOutAt[i]);
        }
        layStores();
        now.solver.solve(along);
    }

    private void layStores() {
        for (Store store : stores) {
            now.solver.law(store.branch(), store.law());
        }
    }
}
