package stillturning.timeline;

import java.util.Map;
import java.util.Optional;

/** The engine: runs while its needs are met, falters, stops, and starts again if turned. */
final class EngineDevice implements Device {

    private enum State {
        RUNS,
        FALTERS,
        STOPPED,
        STARTS
    }

    private static final String NAME = "engine";

    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private State state = State.RUNS;
    private double deadline = NO_DEADLINE;
    private double falteredAt;
    private double longestInterruption;
    private double stoppedAt = NO_DEADLINE;
    private double firstStop = NO_DEADLINE;
    private boolean resting;
    private int stops;

    EngineDevice(Map<String, SupplyDevice> loads, Situation now) {
        this.loads = loads;
        this.now = now;
    }

    boolean stopped() {
        return state == State.STOPPED || state == State.STARTS;
    }

    boolean faltering() {
        return state == State.FALTERS;
    }

    double longestInterruption() {
        return longestInterruption;
    }

    double stoppedAt() {
        return stoppedAt;
    }

    int stops() {
        return stops;
    }

    @Override
    public double margin() {
        if (resting) {
            return NOTHING_TO_WATCH;
        }
        boolean met = met();
        return switch (state) {
            case RUNS -> met ? NOT_NOW : NOW;
            case FALTERS -> met ? NOW : NOT_NOW;
            case STOPPED -> met && now.aircraft.engine().windmills() ? NOW : NOT_NOW;
            case STARTS -> met ? NOT_NOW : NOW;
        };
    }

    @Override
    public void cross() {
        switch (state) {
            case RUNS -> {
                falteredAt = now.seconds;
                enter(State.FALTERS, now.seconds + now.aircraft.engine().toleratedSeconds());
                now.log(Happening.Kind.ENGINE_INTERRUPTED, NAME, "falters: " + missing());
            }
            case FALTERS -> {
                double interrupted = now.seconds - falteredAt;
                longestInterruption = Math.max(longestInterruption, interrupted);
                enter(State.RUNS, NO_DEADLINE);
                now.log(
                        Happening.Kind.ENGINE_RECOVERS,
                        NAME,
                        "runs on after " + Math.round(interrupted * 1000) + " ms");
            }
            case STOPPED ->
                    enter(State.STARTS, now.seconds + now.aircraft.engine().restartSeconds());
            case STARTS -> enter(State.STOPPED, NO_DEADLINE);
        }
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        if (state == State.FALTERS) {
            stop();
        } else {
            now.engineRuns = true;
            stoppedAt = NO_DEADLINE;
            enter(State.RUNS, NO_DEADLINE);
            now.log(Happening.Kind.ENGINE_RESTARTS, NAME, "runs again, turned by the propeller");
        }
    }

    private void stop() {
        stops++;
        stoppedAt = now.seconds;
        firstStop = Math.min(firstStop, stoppedAt);
        now.engineRuns = false;
        enter(State.STOPPED, NO_DEADLINE);
        now.log(Happening.Kind.ENGINE_STOPS, NAME, "stops");
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof EngineDevice then) {
            state = then.state;
            resting = then.resting;
        }
    }

    @Override
    public int sway() {
        return 1;
    }

    /** An engine that stops and starts without end is of no use from its first stop on. */
    @Override
    public void giveUp() {
        if (!stopped()) {
            stop();
        }
        resting = true;
        stoppedAt = firstStop;
        enter(State.STOPPED, NO_DEADLINE);
    }

    private boolean met() {
        return now.aircraft
                .engine()
                .logic()
                .runsOn(
                        load ->
                                Optional.ofNullable(loads.get(load))
                                        .map(SupplyDevice::works)
                                        .orElse(false));
    }

    private String missing() {
        return now.aircraft.engine().logic().loads().stream()
                .filter(
                        load ->
                                !Optional.ofNullable(loads.get(load))
                                        .map(SupplyDevice::works)
                                        .orElse(false))
                .reduce((a, b) -> a + ", " + b)
                .map(names -> "without " + names)
                .orElse("needs not met");
    }

    private void enter(State next, double until) {
        state = next;
        deadline = until;
    }
}
