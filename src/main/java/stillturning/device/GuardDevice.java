package stillturning.device;

import stillturning.element.Guard;
import stillturning.model.Circuit.Placed;
import stillturning.network.BranchLaw;
import stillturning.network.Open;
import stillturning.network.Resistive;
import stillturning.story.Happening;

/** Over-voltage protection that opens its contact for good. */
final class GuardDevice implements Placing {

    private final Placed placed;
    private final Guard guard;
    private final int branch;
    private final int sense;
    private final int senseReturn;
    private final Situation now;
    private final BranchLaw closed;
    private boolean open;
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
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return open ? new Open() : closed;
    }

    @Override
    public double margin() {
        if (open) {
            return NOTHING_TO_WATCH;
        }
        double spare = guard.tripVolts() - volts();
        return deadline == NO_DEADLINE ? spare : -spare;
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        deadline = deadline == NO_DEADLINE ? now.seconds + guard.tripSeconds() : NO_DEADLINE;
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        open = true;
        deadline = NO_DEADLINE;
        now.log(
                Happening.Kind.PROTECTOR_OPENS,
                placed.part(),
                "opens: " + Say.volts(volts()) + " exceeds " + Say.volts(guard.tripVolts()),
                ledBy);
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof GuardDevice then) {
            open = then.open;
        }
    }

    private double volts() {
        return now.voltsBetween(sense, senseReturn);
    }
}
