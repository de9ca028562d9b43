package stillturning.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.network.NoOperatingPoint;

/**
 * Jumps from event to event: settles everything that happens at one instant, then carries charges
 * and heats forward to the next.
 *
 * <p>Order within an instant: margins crossed first, in the order of the parts, then deadlines in
 * the same order; then the network is solved again, until nothing more happens.
 */
final class Simulation {

    /** Flips of one device at one instant, and in one story, that count as chatter. */
    private static final int FLIPS_AT_ONCE = 20;

    private static final int FLIPS_IN_ALL = 400;

    /** Charge or heat may be wrong by this much a step. */
    private static final double TOLERANCE = 1e-9;

    /** Events are found to this (s). */
    private static final double SECONDS = 1e-9;

    /** A charge that moves slower than this a second stands still: full to empty in 30 years. */
    private static final double STANDSTILL = 1e-9;

    private final Situation now;
    private final Map<String, Device> devices = new LinkedHashMap<>();
    private final List<Placing> placings = new ArrayList<>();
    private final List<CellDevice> cells;
    private final int[] flips;
    private final int[] flipsNow;

    Simulation(Plant plant, Crew crew, Situation now) {
        this.now = now;
        devices.putAll(plant.devices());
        devices.putAll(crew.devices());
        plant.all(Placing.class).forEach(placings::add);
        cells = plant.all(CellDevice.class).toList();
        flips = new int[devices.size()];
        flipsNow = new int[devices.size()];
    }

    Map<String, Device> devices() {
        return devices;
    }

    /** Lets delays run out with charges and heats standing still, as before a flight. */
    void comeToRest(double seconds) throws UntoldStory {
        settle();
        for (double next = deadline(); next <= seconds; next = deadline()) {
            now.seconds = next;
            settle();
        }
    }

    /** Whether nothing more will ever happen, or the horizon is reached. */
    boolean over(double horizonSeconds, boolean engineStopped) {
        if (now.seconds >= horizonSeconds) {
            return true;
        }
        if (deadline() < Device.NO_DEADLINE) {
            return false;
        }
        List<Stateful> moving = moving();
        boolean steady = moving.stream().allMatch(s -> !s.quick() && s.perSecond() > 0);
        boolean draining = moving.stream().allMatch(s -> !s.quick() && s.perSecond() < 0);
        return steady || (engineStopped && draining);
    }

    /** Whether only a pilot or the slow change of charges can still bring something about. */
    boolean quiet() {
        return devices.values().stream()
                        .allMatch(d -> d.belongsToPilot() || d.deadline() == Device.NO_DEADLINE)
                && moving().stream().noneMatch(Stateful::quick);
    }

    /** Earliest deadline (s). */
    private double deadline() {
        double earliest = Device.NO_DEADLINE;
        for (Device device : devices.values()) {
            earliest = Math.min(earliest, device.deadline());
        }
        return earliest;
    }

    private List<Stateful> moving() {
        List<Stateful> moving = new ArrayList<>();
        for (Device device : devices.values()) {
            if (device instanceof CellDevice cell && Math.abs(cell.perSecond()) > STANDSTILL) {
                moving.add(cell);
            } else if (device instanceof ProtectorDevice protector) {
                protector.heating().filter(Stateful::quick).ifPresent(moving::add);
            } else if (device instanceof ChannelDevice channel) {
                channel.heating().filter(Stateful::quick).ifPresent(moving::add);
            }
        }
        return moving;
    }

    /** Lets everything happen that happens at this instant. */
    void settle() throws UntoldStory {
        Arrays.fill(flipsNow, 0);
        boolean changed = true;
        while (changed) {
            for (Placing placing : placings) {
                now.solver.law(placing.branch(), placing.law());
            }
            solve();
            boolean crossed = cross();
            changed = expire() || crossed;
        }
    }

    private boolean cross() throws UntoldStory {
        boolean any = false;
        int i = 0;
        for (Map.Entry<String, Device> entry : devices.entrySet()) {
            if (entry.getValue().margin() < 0) {
                entry.getValue().cross();
                any = true;
                if (++flipsNow[i] > FLIPS_AT_ONCE || ++flips[i] > FLIPS_IN_ALL) {
                    giveUp(entry.getKey(), entry.getValue());
                }
            }
            i++;
        }
        return any;
    }

    private void giveUp(String name, Device device) throws UntoldStory {
        if (!device.giveUp()) {
            throw new UntoldStory(
                    name
                            + " flips without end at "
                            + now.seconds
                            + " s, which no steady state can follow");
        }
        now.log(
                Happening.Kind.CHATTER,
                name.substring(0, name.indexOf('/')),
                "chatters without end; taken as let go for good");
    }

    private boolean expire() {
        boolean any = false;
        for (Device device : devices.values()) {
            if (device.deadline() <= now.seconds) {
                device.expire();
                any = true;
            }
        }
        return any;
    }

    private void solve() throws UntoldStory {
        try {
            now.solver.solve();
        } catch (NoOperatingPoint e) {
            throw new UntoldStory("at " + now.seconds + " s: " + e.getMessage(), e);
        }
        now.journal.solved();
    }

    /** Moves on to the next event, a deadline or the horizon, or a step of the way there. */
    void advance(double horizonSeconds) throws UntoldStory {
        double limit = Math.min(deadline(), horizonSeconds);
        List<Stateful> moving = moving();
        if (moving.isEmpty()) {
            now.seconds = limit;
            return;
        }
        try {
            now.seconds = carry(moving, limit);
        } catch (NoOperatingPoint e) {
            throw new UntoldStory("after " + now.seconds + " s: " + e.getMessage(), e);
        }
    }

    /** One accepted step, cut short at the first event. Returns the time reached (s). */
    private double carry(List<Stateful> moving, double limit) throws NoOperatingPoint {
        Integrator integrator = new Integrator(moving, this::solveCells);
        double step = Math.min(limit - now.seconds, guess(moving));
        double error = integrator.attempt(step);
        while (error > TOLERANCE && step > SECONDS) {
            step *= Math.max(0.1, 0.9 * Math.pow(TOLERANCE / error, 0.2));
            error = integrator.attempt(step);
        }
        if (lowestMargin() < 0) {
            step = firstEvent(integrator, step);
        }
        return limit - now.seconds - step < SECONDS / 10 ? limit : now.seconds + step;
    }

    /** A step in which no state moves by more than a quarter of its range. */
    private static double guess(List<Stateful> moving) {
        double step = Double.POSITIVE_INFINITY;
        for (Stateful state : moving) {
            step = Math.min(step, 0.25 / Math.abs(state.perSecond()));
        }
        return step;
    }

    private void solveCells() throws NoOperatingPoint {
        for (CellDevice cell : cells) {
            now.solver.law(cell.branch(), cell.law());
        }
        now.solver.solve();
    }

    private double lowestMargin() {
        double lowest = Double.POSITIVE_INFINITY;
        for (Device device : devices.values()) {
            lowest = Math.min(lowest, device.margin());
        }
        return lowest;
    }

    /** Length of the step (s) just past the first event, by regula falsi (Illinois rule). */
    private double firstEvent(Integrator integrator, double step) throws NoOperatingPoint {
        double before = 0;
        double after = step;
        double marginAfter = lowestMargin();
        integrator.attempt(0);
        double marginBefore = Math.max(lowestMargin(), 0);
        int sideKept = 0;
        while (after - before > SECONDS) {
            double share = marginBefore / (marginBefore - marginAfter);
            double trial = before + (after - before) * Math.max(0.01, Math.min(0.99, share));
            integrator.attempt(trial);
            double margin = lowestMargin();
            if (margin < 0) {
                after = trial;
                marginAfter = margin;
                marginBefore = sideKept == 1 ? marginBefore / 2 : marginBefore;
                sideKept = 1;
            } else {
                before = trial;
                marginBefore = margin;
                marginAfter = sideKept == -1 ? marginAfter / 2 : marginAfter;
                sideKept = -1;
            }
        }
        integrator.attempt(after);
        return after;
    }
}
