package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * Over-voltage protection: a contact between {@code from} and {@code to} that moves for good once
 * the voltage of {@code sense} above {@code to senseReturn} has exceeded its limit long enough.
 *
 * @param ohms resistance of the closed contact (ohm)
 */
public record Guard(
        String name,
        String from,
        String to,
        String sense,
        String senseReturn,
        double ohms,
        GuardTrip trip)
        implements Element {

    /** What its contact does. */
    public enum Action {
        /** Lets through until it acts. */
        DISCONNECTS,
        /** Joins its ends when it acts, so that a protector before it opens. */
        SHORTS
    }

    /**
     * When it acts, and how.
     *
     * @param volts limit (V)
     * @param seconds how long it must be exceeded (s)
     */
    public record GuardTrip(double volts, double seconds, Action action) {
        public GuardTrip {
            Require.positive("over-voltage guard", "trip voltage (V)", volts);
            Require.notNegative("over-voltage guard", "trip time (s)", seconds);
        }
    }

    public Guard {
        Require.positive(name, "contact resistance (ohm)", ohms);
    }

    /** The same with another limit. */
    public Guard trippingAt(GuardTrip other) {
        return new Guard(name, from, to, sense, senseReturn, ohms, other);
    }

    @Override
    public Passage passage() {
        return trip.action == Action.DISCONNECTS ? Passage.BOTH_WAYS : Passage.NONE;
    }

    @Override
    public boolean isStuckUnseen(boolean conducts) {
        return trip.action == Action.DISCONNECTS;
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
