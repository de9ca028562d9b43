package stillturning.story.device.battery;

import java.util.function.DoubleSupplier;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/** Something that counts once it has gone on for a time. */
final class DelayTimer {

    private final DoubleSupplier spare;
    private final double seconds;
    private final Situation now;
    private double deadline = Device.NO_DEADLINE;
    private int ledBy = -1;

    /**
     * @param spare below 0 while it goes on
     * @param seconds how long it must (s)
     */
    DelayTimer(DoubleSupplier spare, double seconds, Situation now) {
        this.spare = spare;
        this.seconds = seconds;
        this.now = now;
    }

    double margin() {
        double left = spare.getAsDouble();
        return deadline == Device.NO_DEADLINE ? left : -left;
    }

    /** Starts to count, or stops, if the margin has fallen below 0. */
    void cross() {
        if (margin() < 0) {
            ledBy = now.journal.cause();
            deadline = deadline == Device.NO_DEADLINE ? now.seconds + seconds : Device.NO_DEADLINE;
        }
    }

    /** Whether what it counts goes on now and has to for less than this (s). */
    boolean runsOutWithin(double within) {
        return spare.getAsDouble() < 0 && seconds < within;
    }

    double deadline() {
        return deadline;
    }

    boolean due() {
        return deadline <= now.seconds;
    }

    void forget() {
        deadline = Device.NO_DEADLINE;
    }

    /** The event that set it going, by its index in the story. */
    int ledBy() {
        return ledBy;
    }
}
