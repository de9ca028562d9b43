package stillturning.story.device.plant;

import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Guard.Action;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Watch;

/** Over-voltage protection that moves its contact for good. */
final class GuardDevice implements BranchDevice {

    private final Placed placed;
    private final Guard guard;
    private final int branch;
    private final int sense;
    private final int senseReturn;
    private final Situation now;
    private final BranchLaw closed;
    private final Watch below;
    private final Watch above;
    private boolean acted;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;

    GuardDevice(Placed placed, Guard guard, int branch, int sense, int senseReturn, Situation now) {
        this.placed = placed;
        this.guard = guard;
        this.branch = branch;
        this.sense = sense;
        this.senseReturn = senseReturn;
        this.now = now;
        this.closed = new Resistive(guard.ohms());
        this.below = Watch.OfVolts.atMost(sense, senseReturn, guard.trip().volts());
        this.above = Watch.OfVolts.atLeast(sense, senseReturn, guard.trip().volts());
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return acted == (guard.trip().action() == Action.SHORTS) ? closed : Open.CIRCUIT;
    }

    @Override
    public boolean gaveWay() {
        return acted;
    }

    @Override
    public double margin() {
        if (acted) {
            return NOTHING_TO_WATCH;
        }
        double spare = guard.trip().volts() - volts();
        return deadline == NO_DEADLINE ? spare : -spare;
    }

    @Override
    public Watch watch() {
        if (acted) {
            return Watch.Plain.NOTHING;
        }
        return deadline == NO_DEADLINE ? below : above;
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        deadline = deadline == NO_DEADLINE ? now.seconds + guard.trip().seconds() : NO_DEADLINE;
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        acted = true;
        deadline = NO_DEADLINE;
        boolean shorts = guard.trip().action() == Action.SHORTS;
        now.log(
                shorts ? StoryEvent.Kind.GUARD_SHORTS : StoryEvent.Kind.PROTECTOR_OPENS,
                placed.part(),
                (shorts ? "shorts its feed: " : "opens: ")
                        + EventWords.volts(volts())
                        + " exceeds "
                        + EventWords.volts(guard.trip().volts()),
                ledBy);
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof GuardDevice then) {
            acted = then.acted;
        }
    }

    private double volts() {
        return now.voltsBetween(sense, senseReturn);
    }
}
