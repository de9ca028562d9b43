package stillturning.story;

/**
 * When in the flight a failure happens.
 *
 * @param phase name of the flight phase
 * @param span what the flight does afterwards
 * @param batteries how they come into it
 */
public record Moment(String phase, FlightSpan span, Batteries batteries) {

    /** What the flight does after the failure. */
    public enum FlightSpan {
        /** The phase lasts as long as the engine does: how long could it run? */
        HELD,
        /** The rest of the phase and the phases after it are flown: does it get home? */
        FLOWN
    }

    /** How the batteries come into the flight. */
    public enum Batteries {
        /** With the charge that the candidate states. */
        AS_STATED,
        /** With what a hard start and a tired battery leave. */
        TIRED
    }

    /** A failure in this phase, which then goes on without end. */
    public static Moment heldIn(String phase) {
        return new Moment(phase, FlightSpan.HELD, Batteries.AS_STATED);
    }
}
