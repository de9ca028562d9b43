package stillturning.story.device;

import java.util.List;

/**
 * A small state machine on one element, on the engine or in the cockpit: one signed margin, one
 * deadline.
 */
public interface Device {

    double NO_DEADLINE = Double.POSITIVE_INFINITY;

    /** Margin of a device that watches nothing just now. */
    double NOTHING_TO_WATCH = Double.POSITIVE_INFINITY;

    /** Margin of a device whose event is a matter of yes or no: not now. */
    double NOT_NOW = Double.MAX_VALUE;

    /** ... and: now. */
    double NOW = -1;

    /** At or above 0 while the present state lasts; the event is where it falls below. */
    double margin();

    /**
     * What the margin is while the present state lasts. It may change when the device crosses or
     * expires, and whenever anything else happens that it hangs on.
     */
    default Watch watch() {
        return Watch.Plain.OWN;
    }

    /** The margin has fallen below 0. */
    void cross();

    /** When the present state ends by itself (s); {@link #NO_DEADLINE} for never. */
    default double deadline() {
        return NO_DEADLINE;
    }

    /** The deadline is here. */
    default void expire() {}

    /**
     * Whether anything can ever happen to it by itself: it has a margin at times, or a deadline.
     */
    default boolean acts() {
        return true;
    }

    /** Whether it ever has a deadline. */
    default boolean waits() {
        return true;
    }

    /** Takes over the state of the same device in another run. */
    void adopt(Device healthy);

    /**
     * How likely it is the one that makes others flip, when devices flip without end: 0 for one
     * that only watches, more for one that opens and closes ways.
     */
    default int blameRank() {
        return 0;
    }

    /**
     * Comes to rest for good after flipping without end. Only asked of a device with a blame rank.
     */
    default void giveUp() {}

    /** What would keep it from flipping, in words. Only asked of a device with a blame rank. */
    default String remedy() {
        return "";
    }

    /** Whether the present currents and voltages, if they last so long (s), open or close a way. */
    default boolean yieldsWithin(double seconds) {
        return false;
    }

    /** Whether its events only follow a slow change, so that many of them are no chatter. */
    default boolean onlyFollows() {
        return false;
    }

    /** What grows warm in it. */
    default List<Stateful> heats() {
        return List.of();
    }

    /** Whether a deadline of this device is a matter of the flight or the pilot, who are slow. */
    default boolean isSlow() {
        return false;
    }
}
