package stillturning.story.device.plant;

import stillturning.parts.element.Tolerance;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Watch;

/** What too much voltage does to a load that is switched on. */
final class WithstandDevice implements Device {

    private final SupplyDevice supply;
    private final Tolerance tolerance;
    private final Situation now;
    private final Watch below;
    private final Watch above;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;

    WithstandDevice(SupplyDevice supply, Tolerance tolerance, Situation now) {
        this.supply = supply;
        this.tolerance = tolerance;
        this.now = now;
        int from = supply.placed().from();
        int to = supply.placed().to();
        this.below = Watch.OfVolts.atMost(from, to, tolerance.withstandVolts());
        this.above = Watch.OfVolts.atLeast(from, to, tolerance.withstandVolts());
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
    public Watch watch() {
        if (supply.destroyed() || !supply.wanted()) {
            return Watch.Plain.NOTHING;
        }
        return deadline == NO_DEADLINE ? below : above;
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
