package stillturning.story.device.plant;

import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * A starter that is fed though nobody turns the key: behind a contactor that is welded or a button
 * that is stuck. It then turns with the engine and goes on drawing.
 *
 * <p>Whether its feed is switched outside of it shows in normal flight: what is live there has a
 * solenoid of its own, and turns only while somebody turns the key.
 */
final class RunOnDevice implements Device {

    /** Below this it is not fed (V). A guess. */
    private static final double DEAD_VOLTS = 1;

    /**
     * So long after the key has sprung back every contactor that is sound has dropped out (s). A
     * guess.
     */
    private static final double DROPPED_OUT_SECONDS = 0.5;

    private enum State {
        DEAD,
        LIVE,
        DRAWS,
        RUNS,
        /** What it drew pulled its feed down to nothing, which is live again since. */
        UNABLE
    }

    private final SupplyDevice starter;
    private final Situation now;
    private boolean switchedOutside;
    private State state = State.DEAD;
    private double deadline = NO_DEADLINE;

    RunOnDevice(SupplyDevice starter, Situation now) {
        this.starter = starter;
        this.now = now;
    }

    @Override
    public double margin() {
        if (!switchedOutside || now.cranking || starter.destroyed()) {
            return state == State.DEAD ? NOTHING_TO_WATCH : NOW;
        }
        double beyond = starter.volts() - DEAD_VOLTS;
        return state == State.DEAD ? -beyond : beyond;
    }

    @Override
    public void cross() {
        boolean watched = switchedOutside && !now.cranking && !starter.destroyed();
        switch (state) {
            case DEAD -> enter(State.LIVE, now.seconds + DROPPED_OUT_SECONDS);
            case LIVE, UNABLE -> enter(State.DEAD, NO_DEADLINE);
            case DRAWS, RUNS -> {
                starter.rest();
                enter(watched ? State.UNABLE : State.DEAD, NO_DEADLINE);
            }
        }
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        if (state == State.LIVE) {
            starter.start();
            starter.run();
            // told once its feed bears it, at the same instant
            enter(State.DRAWS, now.seconds);
            return;
        }
        enter(State.RUNS, NO_DEADLINE);
        now.log(
                StoryEvent.Kind.LOAD_STARTS,
                starter.part(),
                "is fed though nobody turns the key: it turns with the engine and goes on drawing up to "
                        + EventWords.amps(starter.fullAmps()));
    }

    private void enter(State next, double until) {
        state = next;
        deadline = until;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof RunOnDevice then) {
            switchedOutside = then.starter.volts() < DEAD_VOLTS;
        }
    }
}
