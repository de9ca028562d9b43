package stillturning.parts.element;

import java.util.Optional;
import stillturning.parts.element.curve.Require;
import stillturning.parts.element.curve.TimeCurrentCurve;

/**
 * One electronic switch with its own trip, closed by the part's logic.
 *
 * @param trip when it opens for good
 * @param logic name of the part's {@link Consumer} that must run for commands to be obeyed
 * @param closedByDefault state when logic or command path is lost
 * @param lever what commands it, by the name that positions and procedures use
 */
public record Channel(
        String name,
        String from,
        String to,
        Switching switching,
        Trip trip,
        String logic,
        boolean closedByDefault,
        String lever)
        implements Element {

    /** On-resistance (ohm) and the current (A) that the channel limits itself to. */
    public record Switching(double ohms, double limitAmps) {
        public Switching {
            Require.positive("channel", "on-resistance (ohm)", ohms);
            Require.positive("channel", "current limit (A)", limitAmps);
        }
    }

    /** Rating (A) and the time–current curve that opens the channel. */
    public record Trip(double ratedAmps, TimeCurrentCurve curve, double coolingSeconds) {
        public Trip {
            Require.positive("channel", "rating (A)", ratedAmps);
            Require.positive("channel", "cooling time (s)", coolingSeconds);
        }
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }

    @Override
    public Optional<Channel.Trip> overload() {
        return Optional.of(trip);
    }

    @Override
    public Role role() {
        return Role.ELECTRONICS;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
