package stillturning.story.device.battery;

import java.util.List;
import stillturning.parts.element.curve.Overcharge;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;

/**
 * A battery that turns charge to gas: told when it begins to matter, and lost once half of its
 * capacity is gone that way. Counted as the part of that half.
 */
public final class OverchargeDevice implements Device, Stateful {

    /** It begins and ends to be followed at this rate, at which it does not stand still (1/s). */
    private static final double BEGINS_PER_SECOND = 2e-9;

    private final CellDevice cell;
    private final Situation now;
    private double gassed;

    /** An event of its own: what begins within a step would only be followed after it. */
    private boolean gassing;

    private boolean told;
    private boolean ruined;

    public OverchargeDevice(CellDevice cell, Situation now) {
        this.cell = cell;
        this.now = now;
    }

    @Override
    public List<Stateful> heats() {
        return List.of(this);
    }

    @Override
    public double margin() {
        if (ruined) {
            return NOTHING_TO_WATCH;
        }
        double more = harmfulAmps() - BEGINS_PER_SECOND * borneCoulombs();
        return gassing ? Math.min(1 - gassed, more) : -more;
    }

    @Override
    public void cross() {
        if (!gassing || gassed < 1) {
            gassing = !gassing;
            tellOnce();
            return;
        }
        ruined = true;
        now.log(
                StoryEvent.Kind.BATTERY_DISCONNECTS,
                cell.placed().part(),
                "is lost for good: half of its capacity has turned to gas");
        cell.disconnect();
    }

    private void tellOnce() {
        if (!told) {
            told = true;
            now.log(
                    StoryEvent.Kind.BATTERY_GASSES,
                    cell.placed().part(),
                    "is overcharged: " + EventWords.volts(cell.volts()) + " make it gas");
        }
    }

    /** Current that becomes gas, above what does no harm (A). */
    private double harmfulAmps() {
        double harmless = Overcharge.HARMLESS_SHARE * cell.cell().capacity().oneHourAmps();
        return cell.gassingAmps() - harmless;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof OverchargeDevice then) {
            gassed = then.gassed;
            gassing = then.gassing;
            told = then.told;
            ruined = then.ruined;
        }
    }

    @Override
    public double value() {
        return gassed;
    }

    @Override
    public void value(double value) {
        gassed = value;
    }

    @Override
    public double perSecond() {
        double harm = ruined ? 0 : Math.max(0, harmfulAmps());
        return harm / borneCoulombs();
    }

    private double borneCoulombs() {
        return Overcharge.BORNE_SHARE * cell.cell().capacity().coulombs();
    }

    @Override
    public double way() {
        return Math.max(0, 1 - gassed);
    }

    @Override
    public boolean quick() {
        return false;
    }
}
