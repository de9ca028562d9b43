package stillturning.story.device.plant;

import stillturning.parts.element.Tolerance;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/** What too much voltage does to a load that is switched on. */
final class WithstandDevice implements Device {

    private final SupplyDevice supply;
    private final Tolerance tolerance;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;

    WithstandDevice(SupplyDevice supply, Tolerance tolerance, Situation now) {
        this.supply = supply;
        this.tolerance = tolerance;
        this.now = now;
    }

    @Override
    public double margin() {
        if (supply.destroyed() || !supply.wanted()) {
            return NOTHING_TO_WATCH;
        }
        double spare = tolerance.withstandVolts() - supply.volts();
        return deadline == NO_DEADLINE ? spare : -spare;
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        deadline =
                deadline == NO_DEADLINE ? now.seconds + tolerance.withstandSeconds() : NO_DEADLINE;
    }

    @Override
    public double deadline() {
        return supply.wanted() ? deadline : NO_DEADLINE;
    }

    @Override
    public void expire() {
        now.log(
                StoryEvent.Kind.LOAD_DESTROYED,
                supply.part(),
                "is lost: "
                        + EventWords.volts(supply.volts())
                        + " exceeds its "
                        + EventWords.volts(tolerance.withstandVolts()),
                ledBy);
        supply.destroy();
        deadline = NO_DEADLINE;
    }

    @Override
    public void adopt(Device healthy) {}
}
