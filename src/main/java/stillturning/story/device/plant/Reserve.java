package stillturning.story.device.plant;

import stillturning.parts.element.Tolerance;
import stillturning.parts.element.Tolerance.OwnBattery;

/**
 * How long a load works without supply: its ride-through, which is there each time, and its own
 * battery, which has to be charged first. It fills and empties at steady rates, which is a guess.
 */
final class Reserve {

    private final double rideThroughSeconds;
    private final double fullSeconds;

    /** Seconds of work stored each second. */
    private final double filling;

    /** What is stored (s), and when that was so (s). */
    private double stored;

    private double since;

    Reserve(Tolerance tolerance) {
        rideThroughSeconds = tolerance.rideThroughSeconds();
        fullSeconds = tolerance.ownBattery().map(OwnBattery::seconds).orElse(0.0);
        filling = tolerance.ownBattery().map(b -> b.seconds() / b.rechargeSeconds()).orElse(0.0);
        stored = fullSeconds;
    }

    /** The supply is lost. Returns how long the load works on (s). */
    double startsAt(double seconds) {
        stored = Math.min(fullSeconds, stored + filling * (seconds - since));
        since = seconds;
        return rideThroughSeconds + stored;
    }

    /** How long the load would work on if its supply were lost now (s). */
    double seconds(double seconds) {
        return rideThroughSeconds + Math.min(fullSeconds, stored + filling * (seconds - since));
    }

    /** The load works by its supply again, or has stopped: what was used is gone. */
    void endsAt(double seconds) {
        stored = Math.max(0, stored - Math.max(0, seconds - since - rideThroughSeconds));
        since = seconds;
    }

    /** Takes over what is stored in another run, whose time ends where this one begins. */
    void adopt(Reserve healthy) {
        stored = healthy.stored;
    }
}
