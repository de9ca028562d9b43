package stillturning.story.timeline;

import stillturning.story.Pilot;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/**
 * The pilot's hand at the starter: as the flight has it after a phase with the engine off; by habit
 * some time after the engine has stopped, again once he has done something about it, and once more
 * when what the engine needs has come back.
 */
final class StarterKey implements Device {

    private final EngineDevice engine;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private int stop = -1;
    private int triedAfterMoves;
    private boolean triedWithNeedsMet;
    private boolean pressed;

    StarterKey(EngineDevice engine, Situation now) {
        this.engine = engine;
        this.now = now;
    }

    /** Whether he has pressed it although no flight plan asked for it. */
    boolean pressed() {
        return pressed;
    }

    @Override
    public double margin() {
        boolean waits = deadline < NO_DEADLINE;
        return waits == wants() ? NOT_NOW : NOW;
    }

    private boolean wants() {
        if (!engine.stands() || now.windmills() || !engine.hasStarter()) {
            return false;
        }
        return engine.startIsPlanned() || (byHabit() && hasReason());
    }

    private boolean byHabit() {
        return now.setting.pilot() != Pilot.NEVER
                && now.aircraft.engine().starting().habitSeconds().isPresent();
    }

    private boolean hasReason() {
        return stop != engine.stops()
                || triedAfterMoves < now.moves
                || (engine.met() && !triedWithNeedsMet);
    }

    @Override
    public void cross() {
        deadline = wants() ? now.seconds + waitSeconds() : NO_DEADLINE;
    }

    private double waitSeconds() {
        double habit = now.aircraft.engine().starting().habitSeconds().orElse(0.0);
        return engine.startIsPlanned() ? 0 : now.setting.pilot().responseSeconds(habit);
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        deadline = NO_DEADLINE;
        pressed |= !engine.startIsPlanned();
        triedWithNeedsMet = engine.met() || (stop == engine.stops() && triedWithNeedsMet);
        stop = engine.stops();
        triedAfterMoves = now.moves;
        now.presses++;
    }

    @Override
    public void adopt(Device healthy) {}

    @Override
    public boolean isSlow() {
        return true;
    }
}
