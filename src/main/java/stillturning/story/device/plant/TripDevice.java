package stillturning.story.device.plant;

import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.element.curve.Tripping;
import stillturning.story.device.Racer;
import stillturning.story.device.Situation;

/**
 * What opens a protector: heat by its published curve at one edge of the band, in the temperature
 * of its place.
 */
final class TripDevice implements Racer {

    private final String part;
    private final TimeCurrentCurve curve;
    private final int branch;
    private final Situation now;
    private final Tripping edge;

    /** Rating that counts in this place (A). */
    private final double amps;

    private final Heat heat;

    TripDevice(String part, Trip trip, int branch, Situation now) {
        this.part = part;
        this.curve = trip.curve();
        this.branch = branch;
        this.now = now;
        this.edge = now.setting.race().edgeOf(part);
        this.amps = trip.ratedAmps() * curve.derating().share(now.celsius(part));
        this.heat =
                new Heat(
                        new Heat.Law(
                                amps * curve.holdMultiple(edge),
                                current -> curve.secondsToOpen(current / amps, edge),
                                trip.coolingSeconds(),
                                curve.memory()),
                        branch,
                        now);
        now.racers.add(this);
    }

    Heat heat() {
        return heat;
    }

    /** The heat's margin is used up. Returns whether the protector opens. */
    boolean crossed() {
        if (!heat.crossed()) {
            return false;
        }
        now.opens(part, time(Tripping.SLOW));
        return true;
    }

    /** Whether the present current opens it in so short a time (s). */
    boolean opensWithin(double seconds) {
        return time(edge) < seconds;
    }

    /** What is to be added where a slower one of the kind would not open. */
    String doubt() {
        return Double.isInfinite(time(Tripping.SLOW))
                ? ", which a slow one of its kind may carry continuously"
                : "";
    }

    @Override
    public String part() {
        return part;
    }

    @Override
    public double seconds(Tripping other) {
        return heat.heating() ? time(other) : Double.POSITIVE_INFINITY;
    }

    private double time(Tripping other) {
        double multiple = Math.abs(now.amps(branch)) / amps;
        double hold = curve.holdMultiple(other);
        if (!(multiple > hold)) {
            return Double.POSITIVE_INFINITY;
        }
        double warmer = curve.holdMultiple(edge) / hold;
        double from = Math.min(1, heat.before() * warmer * warmer);
        return heat.seconds(curve.secondsToOpen(multiple, other), multiple / hold, from);
    }
}
