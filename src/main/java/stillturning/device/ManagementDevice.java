package stillturning.device;

import stillturning.element.Management;
import stillturning.story.Happening;

/** A battery's management system: disconnects it when a limit has been passed long enough. */
final class ManagementDevice implements Device {

    private final CellDevice cell;
    private final Management limits;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private int ledBy = -1;

    ManagementDevice(CellDevice cell, Management limits, Situation now) {
        this.cell = cell;
        this.limits = limits;
        this.now = now;
    }

    @Override
    public double margin() {
        if (cell.disconnected()) {
            return NOTHING_TO_WATCH;
        }
        double spare = Math.min(low(), Math.min(high(), current()));
        return deadline == NO_DEADLINE ? spare : -spare;
    }

    @Override
    public void cross() {
        ledBy = now.journal.cause();
        deadline = deadline == NO_DEADLINE ? now.seconds + limits.seconds() : NO_DEADLINE;
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        String why;
        if (current() < 0) {
            why = Say.amps(cell.dischargeAmps()) + " exceeds its " + Say.amps(limits.overAmps());
        } else if (low() < 0) {
            why = Say.volts(cell.volts()) + " is below its " + Say.volts(limits.underVolts());
        } else {
            why = Say.volts(cell.volts()) + " exceeds its " + Say.volts(limits.overVolts());
        }
        now.log(
                Happening.Kind.BATTERY_DISCONNECTS,
                cell.placed().part(),
                "disconnects itself: " + why,
                ledBy);
        cell.disconnect();
        deadline = NO_DEADLINE;
    }

    @Override
    public void adopt(Device healthy) {}

    /** A battery that is being charged is let off, however low it is. */
    private double low() {
        return Math.max(cell.volts() - limits.underVolts(), -cell.dischargeAmps());
    }

    private double high() {
        return limits.overVolts() - cell.volts();
    }

    private double current() {
        return limits.overAmps() - cell.dischargeAmps();
    }
}
