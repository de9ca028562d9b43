package stillturning.story.device.battery;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * Notices that another battery pours into this one faster than in an hour: what joins the two has
 * to bear it. Told once a story.
 */
public final class EqualisingDevice implements Device {

    private final CellDevice cell;
    private final Supplier<List<CellDevice>> all;
    private final BiPredicate<Integer, Integer> reaches;
    private final Situation now;
    private boolean told;

    /**
     * @param reaches whether current can get from one net to another
     */
    public EqualisingDevice(
            CellDevice cell,
            Supplier<List<CellDevice>> all,
            BiPredicate<Integer, Integer> reaches,
            Situation now) {
        this.cell = cell;
        this.all = all;
        this.reaches = reaches;
        this.now = now;
    }

    @Override
    public double margin() {
        if (told) {
            return NOTHING_TO_WATCH;
        }
        double oneHour = cell.cell().capacity().oneHourAmps();
        double taken = -cell.dischargeAmps();
        return taken <= oneHour ? oneHour - taken : oneHour - Math.min(taken, given());
    }

    /** Largest current of another battery whose current can get here (A). */
    private double given() {
        double most = 0;
        for (CellDevice other : all.get()) {
            double amps = other.dischargeAmps();
            if (amps > most && reaches.test(other.placed().from(), cell.placed().from())) {
                most = amps;
            }
        }
        return most;
    }

    @Override
    public void cross() {
        told = true;
        now.log(
                StoryEvent.Kind.BATTERIES_EQUALISE,
                cell.placed().part(),
                "takes in "
                        + EventWords.amps(-cell.dischargeAmps())
                        + " from another battery, more than would fill it in an hour");
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof EqualisingDevice then) {
            told = then.told;
        }
    }
}
