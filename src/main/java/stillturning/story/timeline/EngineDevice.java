package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stillturning.model.EngineLogic;
import stillturning.model.Phase;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.SupplyDevice;

/**
 * The engine: runs while its needs are met, falters, stops, and starts again if turned; rests where
 * the flight has it off.
 */
final class EngineDevice implements Device {

    private enum State {
        RUNS,
        FALTERS,
        STOPPED,
        CRANKED,
        STARTS,
        RESTS
    }

    /** A time in which the flight has it off (s). */
    private record Rest(double from, double to) {
        double until(double seconds) {
            return Math.max(0, Math.min(seconds, to) - from);
        }
    }

    /** Longest cranking where no phase says it (s). A guess. */
    private static final double USUAL_CRANKING_SECONDS = 10;

    private static final String NAME = "engine";
    private static final Set<String> ITSELF = Set.of(NAME);

    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private final EngineLogic logic;
    private final Predicate<String> working = this::works;
    private State state = State.RUNS;
    private double deadline = NO_DEADLINE;
    private double falteredAt;
    private double longestInterruption;
    private double stoppedAt = NO_DEADLINE;
    private int stops;
    private double crankedUntil = NO_DEADLINE;
    private double crankedSince;
    private int answeredPresses;
    private boolean mayStart = true;
    private boolean startIsPlanned;
    private double restsSince;
    private final List<Rest> rests = new ArrayList<>();

    EngineDevice(Map<String, SupplyDevice> loads, Situation now) {
        this.loads = loads;
        this.now = now;
        this.logic = now.aircraft.engine().logic();
    }

    boolean stopped() {
        return state == State.STOPPED || state == State.CRANKED || state == State.STARTS;
    }

    /** It stands, as before the first start, until the flight has it started. */
    void stand() {
        state = State.RESTS;
        now.engineRuns = false;
        mayStart = false;
    }

    /** The flight has it started. */
    void mayStart() {
        mayStart = true;
    }

    /** Whether it has stopped, or was not started, and nobody tries to start it. */
    boolean stands() {
        return state == State.STOPPED;
    }

    boolean rests() {
        return state == State.RESTS;
    }

    /** Whether the flight has it started, and nobody has tried yet. */
    boolean startIsPlanned() {
        return startIsPlanned;
    }

    boolean hasStarter() {
        return starter().isPresent();
    }

    /** Time until then in which it was not off on purpose (s). */
    double runningSeconds(double until) {
        double resting = state == State.RESTS ? new Rest(restsSince, until).until(until) : 0;
        return until - resting - rests.stream().mapToDouble(rest -> rest.until(until)).sum();
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
            case RUNS -> met && !now.phase.engineOff() ? NOT_NOW : NOW;
            case FALTERS -> met || now.phase.engineOff() ? NOW : NOT_NOW;
            case STOPPED ->
                    now.phase.engineOff() || isPressed() || (met && now.windmills())
                            ? NOW
                            : NOT_NOW;
            case RESTS -> mayStart && !now.phase.engineOff() ? NOW : NOT_NOW;
            case CRANKED -> met && turned() ? NOW : NOT_NOW;
            case STARTS -> met && turned() ? NOT_NOW : NOW;
        };
    }

    @Override
    public void cross() {
        if (now.phase.engineOff()) {
            rest();
            return;
        }
        switch (state) {
            case RUNS -> {
                falteredAt = now.seconds;
                enter(State.FALTERS, now.seconds + now.aircraft.engine().toleratedSeconds());
                now.log(
                        StoryEvent.Kind.ENGINE_INTERRUPTED,
                        NAME,
                        "falters: " + missing(),
                        ledBy(needs()));
            }
            case FALTERS -> {
                double interrupted = now.seconds - falteredAt;
                longestInterruption = Math.max(longestInterruption, interrupted);
                enter(State.RUNS, NO_DEADLINE);
                now.log(
                        StoryEvent.Kind.ENGINE_RECOVERS,
                        NAME,
                        "runs on after " + Math.round(interrupted * 1000) + " ms",
                        ledBy(needs()));
            }
            case STOPPED -> {
                if (now.windmills()) {
                    enter(State.STARTS, now.seconds + now.aircraft.engine().restartSeconds());
                } else {
                    crank();
                }
            }
            case RESTS -> {
                rests.add(new Rest(restsSince, now.seconds));
                stoppedAt = now.seconds;
                startIsPlanned = true;
                answeredPresses = now.presses;
                enter(State.STOPPED, NO_DEADLINE);
            }
            case CRANKED ->
                    enter(State.STARTS, now.seconds + now.aircraft.engine().restartSeconds());
            case STARTS -> enter(now.cranking ? State.CRANKED : State.STOPPED, NO_DEADLINE);
        }
    }

    @Override
    public double deadline() {
        return Math.min(deadline, crankedUntil);
    }

    @Override
    public void expire() {
        if (state == State.FALTERS) {
            stops++;
            stoppedAt = now.seconds;
            stop("stops");
        } else if (deadline <= now.seconds) {
            String turnedBy = now.cranking ? "the starter, " + held() : "the propeller";
            now.engineRuns = true;
            stoppedAt = NO_DEADLINE;
            startIsPlanned = false;
            release();
            enter(State.RUNS, NO_DEADLINE);
            now.log(
                    StoryEvent.Kind.ENGINE_RESTARTS,
                    NAME,
                    (stops > 0 ? "runs again" : "runs") + ", turned by " + turnedBy,
                    ledBy(needs()));
        } else {
            now.log(
                    StoryEvent.Kind.CRANKING_FAILS,
                    NAME,
                    "does not start: " + wanting() + "; " + held(),
                    ledBy(needs()));
            release();
            enter(State.STOPPED, NO_DEADLINE);
        }
    }

    /** Something else than electricity stops it. */
    void halt() {
        if (!stopped()) {
            stops++;
            stoppedAt = now.seconds;
            stop("is stopped by something else");
        }
    }

    private void stop(String words) {
        now.engineRuns = false;
        answeredPresses = now.presses;
        enter(State.STOPPED, NO_DEADLINE);
        now.log(StoryEvent.Kind.ENGINE_STOPS, NAME, words, ledBy(ITSELF));
    }

    private void rest() {
        // one that has stopped has not run since then
        restsSince = stopped() ? stoppedAt : now.seconds;
        stoppedAt = NO_DEADLINE;
        now.engineRuns = false;
        release();
        enter(State.RESTS, NO_DEADLINE);
        now.log(StoryEvent.Kind.PHASE, NAME, "is off, as the flight has it", ledBy(ITSELF));
    }

    private boolean isPressed() {
        return answeredPresses < now.presses && !now.windmills() && hasStarter();
    }

    /** The key springs back: what it does lasts only while it is held. */
    private String held() {
        return "the key held for " + EventWords.seconds(now.seconds - crankedSince);
    }

    private void crank() {
        crankedSince = now.seconds;
        answeredPresses = now.presses;
        startIsPlanned = false;
        crankedUntil = now.seconds + crankingSeconds();
        now.crank(true);
        enter(State.CRANKED, NO_DEADLINE);
        now.log(
                StoryEvent.Kind.CRANKING,
                NAME,
                "is cranked: the starter is pressed",
                ledBy(ITSELF));
    }

    private void release() {
        now.crank(false);
        crankedUntil = NO_DEADLINE;
    }

    /** How long one keeps the key turned: as long as the phase in which the starter runs. */
    private double crankingSeconds() {
        return now.aircraft.phases().stream()
                .filter(phase -> starter().map(s -> s.runsIn(phase)).orElse(false))
                .mapToDouble(Phase::seconds)
                .findFirst()
                .orElse(USUAL_CRANKING_SECONDS);
    }

    private Optional<SupplyDevice> starter() {
        return now.aircraft.engine().starting().starter().map(loads::get);
    }

    /** Whether air or starter turn it. */
    private boolean turned() {
        return now.windmills()
                || (now.cranking && starter().map(SupplyDevice::works).orElse(false));
    }

    private String wanting() {
        return met()
                ? starter()
                        .map(s -> "the starter has only " + EventWords.volts(s.volts()))
                        .orElse("nothing turns it")
                : missing();
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof EngineDevice then) {
            state = then.state;
            restsSince = now.seconds;
            stoppedAt = stopped() ? now.seconds : NO_DEADLINE;
            now.engineRuns = !stopped() && !rests();
        }
    }

    private Set<String> needs() {
        return Set.copyOf(logic.loads());
    }

    private int ledBy(Set<String> parts) {
        return now.journal.latestOf(parts);
    }

    private boolean works(String load) {
        SupplyDevice supply = loads.get(load);
        return supply != null && supply.works();
    }

    boolean met() {
        return logic.runsOn(working);
    }

    private String missing() {
        return logic.loads().stream()
                .filter(load -> !works(load))
                .reduce((a, b) -> a + ", " + b)
                .map(names -> "without " + names)
                .orElse("needs not met");
    }

    private void enter(State next, double until) {
        state = next;
        deadline = until;
    }
}
