package stillturning.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.device.CellDevice;
import stillturning.device.Device;
import stillturning.device.Placing;
import stillturning.device.Plant;
import stillturning.device.Situation;
import stillturning.device.Stateful;
import stillturning.network.NoOperatingPoint;
import stillturning.story.UntoldStory;

/**
 * Jumps from event to event: settles everything that happens at one instant, then carries charges
 * and heats forward to the next.
 *
 * <p>Order within an instant: margins crossed first, in the order of the parts, then deadlines in
 * the same order; then the network is solved again, until nothing more happens.
 */
final class Simulation {

    /** A charge that moves slower than this a second stands still: full to empty in 30 years. */
    static final double STANDSTILL = 1e-9;

    private final Situation now;
    private final Map<String, Device> byName = new LinkedHashMap<>();
    private final Device[] devices;
    private final Placing[] placings;
    private final CellDevice[] cells;
    private final Stateful[] heats;
    private final List<Stateful> moving = new ArrayList<>();
    private final Chatter chatter;
    private final Integrator integrator;
    private final Advance advance;

    Simulation(Plant plant, Crew crew, Situation now, Meter meter, double longestStepSeconds) {
        this.now = now;
        byName.putAll(plant.devices());
        byName.putAll(crew.devices());
        devices = byName.values().toArray(Device[]::new);
        placings = plant.all(Placing.class).toArray(Placing[]::new);
        cells = plant.all(CellDevice.class).toArray(CellDevice[]::new);
        heats = plant.heats().toArray(Stateful[]::new);
        chatter = new Chatter(byName.keySet().toArray(String[]::new), devices, now);
        Dips dips = new Dips(devices, Integrator.STAGES);
        integrator =
                new Integrator(
                        cells.length + heats.length, this::solveCells, new Followers(meter, dips));
        advance = new Advance(integrator, dips, longestStepSeconds);
    }

    /** Energy and margins are read at the same stages. */
    private record Followers(Meter meter, Dips dips) implements Integrator.Follower {
        @Override
        public void read(int stage) {
            meter.read(stage);
            // the last stage but one only foretells the end, so that of the end takes its place
            dips.read(Math.min(stage, Integrator.STAGES - 2));
        }

        @Override
        public void taken(double seconds, double[] weights) {
            meter.taken(seconds, weights);
        }
    }

    Map<String, Device> devices() {
        return byName;
    }

    /** Lets delays run out with charges and heats standing still, as before a flight. */
    void comeToRest() throws UntoldStory {
        settle();
        for (double next = deadline(); next < Device.NO_DEADLINE; next = deadline()) {
            now.seconds = next;
            settle();
        }
    }

    /** Whether nothing more will ever happen, or the horizon is reached. */
    boolean over(double horizonSeconds, boolean engineStopped) throws UntoldStory {
        if (now.seconds >= horizonSeconds
                || (moving.isEmpty() && deadline() == Device.NO_DEADLINE)) {
            return true;
        }
        if (deadline() < Device.NO_DEADLINE) {
            return false;
        }
        boolean filling = true;
        boolean draining = true;
        for (Stateful state : moving) {
            filling &= !state.quick() && state.perSecond() > 0;
            draining &= !state.quick() && state.perSecond() < 0;
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
        for (Device device : devices) {
            if (!device.belongsToPilot() && device.deadline() < Device.NO_DEADLINE) {
                return false;
            }
        }
        return true;
    }

    /** Charging moves every voltage one way, so what has not happened at its end never does. */
    private boolean nothingHappensOnTheWayToFull() throws UntoldStory {
        double[] charges = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            charges[i] = cells[i].value();
            if (cells[i].perSecond() > 0) {
                cells[i].charge(1);
            }
        }
        resolve();
        boolean nothing = lowestMargin() >= 0;
        for (int i = 0; i < cells.length; i++) {
            cells[i].charge(charges[i]);
        }
        resolve();
        return nothing;
    }

    /** Earliest deadline (s). */
    private double deadline() {
        double earliest = Device.NO_DEADLINE;
        for (Device device : devices) {
            earliest = Math.min(earliest, device.deadline());
        }
        return earliest;
    }

    /** Lets everything happen that happens at this instant. */
    void settle() throws UntoldStory {
        chatter.newInstant();
        boolean changed = true;
        while (changed) {
            now.layings++;
            for (Placing placing : placings) {
                now.solver.law(placing.branch(), placing.law());
            }
            solve();
            boolean crossed = cross();
            changed = expire() || crossed;
        }
        findMoving();
    }

    private boolean cross() throws UntoldStory {
        boolean any = false;
        for (int i = 0; i < devices.length; i++) {
            if (devices[i].margin() < 0) {
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
        for (Device device : devices) {
            if (device.deadline() <= now.seconds) {
                device.expire();
                any = true;
            }
        }
        return any;
    }

    private void findMoving() {
        moving.clear();
        for (CellDevice cell : cells) {
            if (Math.abs(cell.perSecond()) > STANDSTILL) {
                moving.add(cell);
            }
        }
        for (Stateful heat : heats) {
            if (heat.quick()) {
                moving.add(heat);
            }
        }
    }

    private void solve() throws UntoldStory {
        try {
            now.solver.solve();
        } catch (NoOperatingPoint e) {
            throw now.untold(e);
        }
        now.journal.solved();
    }

    private void resolve() throws UntoldStory {
        try {
            solveCells();
        } catch (NoOperatingPoint e) {
            throw now.untold(e);
        }
    }

    /** Moves on to the next event, a deadline or the horizon, or a step of the way there. */
    void advance(double horizonSeconds) throws UntoldStory {
        double limit = Math.min(deadline(), horizonSeconds);
        try {
            if (moving.isEmpty()) {
                integrator.rest(limit - now.seconds);
                now.seconds = limit;
            } else {
                now.seconds = advance.from(now.seconds, limit, moving);
            }
        } catch (NoOperatingPoint e) {
            throw now.untold(e);
        }
    }

    private void solveCells() throws NoOperatingPoint {
        for (CellDevice cell : cells) {
            now.solver.law(cell.branch(), cell.law());
        }
        now.solver.solve();
    }

    private double lowestMargin() {
        double lowest = Double.POSITIVE_INFINITY;
        for (Device device : devices) {
            lowest = Math.min(lowest, device.margin());
        }
        return lowest;
    }
}
