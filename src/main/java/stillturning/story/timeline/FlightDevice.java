package stillturning.story.timeline;

import java.util.List;
import stillturning.model.Phase;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/**
 * The flight after the failure: one phase after the other, until the last or until it has landed.
 */
final class FlightDevice implements Device {

    private final List<Phase> ahead;
    private final boolean lands;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private int next;
    private boolean landed;

    /**
     * @param ahead phases after the present one; what is flown when the failure comes is the whole
     *     of the present one
     */
    FlightDevice(FlightConditions.Ahead ahead, Situation now) {
        this.ahead = ahead.phases();
        this.lands = ahead.lands();
        this.now = now;
    }

    /** What is flown begins now. */
    void begin() {
        deadline = now.seconds + now.phase.seconds();
    }

    boolean landed() {
        return landed;
    }

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        if (next == ahead.size()) {
            landed = true;
            deadline = NO_DEADLINE;
            now.log(StoryEvent.Kind.PHASE, "flight", "has landed");
            return;
        }
        now.phase = ahead.get(next++);
        now.phasesFlown++;
        deadline = next < ahead.size() || lands ? now.seconds + now.phase.seconds() : NO_DEADLINE;
        now.log(StoryEvent.Kind.PHASE, "flight", now.phase.name() + " begins");
    }

    @Override
    public void adopt(Device healthy) {}

    @Override
    public boolean isSlow() {
        return true;
    }
}
