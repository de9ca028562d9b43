package stillturning.timeline;

/**
 * A small state machine on one element, on the engine or in the cockpit: one signed margin, one
 * deadline.
 */
interface Device {

    double NO_DEADLINE = Double.POSITIVE_INFINITY;

    /** Margin of a device that watches nothing just now. */
    double NOTHING_TO_WATCH = Double.POSITIVE_INFINITY;

    /** Margin of a device whose event is a matter of yes or no: not now. */
    double NOT_NOW = 1;

    /** ... and: now. */
    double NOW = -1;

    /** At or above 0 while the present state lasts; the event is where it falls below. */
    double margin();

    /** The margin has fallen below 0. */
    void cross();

    /** When the present state ends by itself (s); {@link #NO_DEADLINE} for never. */
    default double deadline() {
        return NO_DEADLINE;
    }

    /** The deadline is here. */
    default void expire() {}

    /** Takes over the state of the same device in another run. */
    void adopt(Device healthy);

    /** Stops a device that flips without end; true if it had something to stop. */
    default boolean giveUp() {
        return false;
    }

    /** Whether a deadline of this device belongs to the pilot, who is slow. */
    default boolean belongsToPilot() {
        return false;
    }
}
