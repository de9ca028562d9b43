package stillturning.timeline;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.device.Device;
import stillturning.device.Situation;
import stillturning.device.SupplyDevice;
import stillturning.story.Happening;

/** The engine: runs while its needs are met, falters, stops, and starts again if turned. */
final class EngineDevice implements Device {

    private enum State {
        RUNS,
        FALTERS,
        STOPPED,
        STARTS
    }

    private static final String NAME = "engine";
    private static final Set<String> ITSELF = Set.of(NAME);

    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private final Set<String> needs;
    private State state = State.RUNS;
    private double deadline = NO_DEADLINE;
    private double falteredAt;
    private double longestInterruption;
    private double stoppedAt = NO_DEADLINE;
    private int stops;

    EngineDevice(Map<String, SupplyDevice> loads, Situation now) {
        this.loads = loads;
        this.now = now;
        this.needs = Set.copyOf(now.aircraft.engine().logic().loads());
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
                now.log(
                        Happening.Kind.ENGINE_INTERRUPTED,
                        NAME,
                        "falters: " + missing(),
                        ledBy(needs));
            }
            case FALTERS -> {
                double interrupted = now.seconds - falteredAt;
                longestInterruption = Math.max(longestInterruption, interrupted);
                enter(State.RUNS, NO_DEADLINE);
                now.log(
                        Happening.Kind.ENGINE_RECOVERS,
                        NAME,
                        "runs on after " + Math.round(interrupted * 1000) + " ms",
                        ledBy(needs));
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
            stops++;
            stoppedAt = now.seconds;
            now.engineRuns = false;
            enter(State.STOPPED, NO_DEADLINE);
            now.log(Happening.Kind.ENGINE_STOPS, NAME, "stops", ledBy(ITSELF));
        } else {
            now.engineRuns = true;
            stoppedAt = NO_DEADLINE;
            enter(State.RUNS, NO_DEADLINE);
            now.log(
                    Happening.Kind.ENGINE_RESTARTS,
                    NAME,
                    "runs again, turned by the propeller",
                    ledBy(needs));
        }
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof EngineDevice then) {
            state = then.state;
        }
    }

    private int ledBy(Set<String> parts) {
        return now.journal.latestOf(parts);
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
