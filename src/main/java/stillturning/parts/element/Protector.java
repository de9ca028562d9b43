package stillturning.parts.element;

import java.util.Optional;
import stillturning.parts.element.curve.Require;
import stillturning.parts.element.curve.TimeCurrentCurve;

/**
 * Fuse or breaker: metal until its time–current curve says open, then a gap until it is reset.
 *
 * @param ratedAmps rating (A)
 * @param coolingSeconds time in which it forgets its heat (s)
 * @param pullable whether a pilot can open and re-close it by hand
 */
public record Protector(
        String name,
        String from,
        String to,
        double ohms,
        double ratedAmps,
        TimeCurrentCurve curve,
        double coolingSeconds,
        boolean pullable)
        implements Element {

    public Protector {
        Require.positive(name, "resistance (ohm)", ohms);
        Require.positive(name, "rating (A)", ratedAmps);
        Require.positive(name, "cooling time (s)", coolingSeconds);
    }

    /** What opens it. */
    public Channel.Trip trip() {
        return new Channel.Trip(ratedAmps, curve, coolingSeconds);
    }

    @Override
    public Passage passage() {
        return Passage.BOTH_WAYS;
    }

    @Override
    public Optional<Channel.Trip> overload() {
        return Optional.of(trip());
    }

    @Override
    public boolean isStuckUnseen(boolean conducts) {
        return true;
    }

    @Override
    public Role role() {
        return Role.PATH;
    }

    @Override
    public <T> T accept(Visitor<T> visitor) {
        return visitor.visit(this);
    }
}
