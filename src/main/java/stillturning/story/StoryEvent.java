package stillturning.story;

/**
 * One event of a story.
 *
 * @param seconds when, counted from the failure (s)
 * @param part part, procedure or cue that it happens to
 * @param words what happens, complete with its numbers
 * @param cause index in the story of the event that led to it; -1 for none
 */
public record StoryEvent(double seconds, Kind kind, String part, String words, int cause) {

    /**
     * By which times differ that were computed from the same in another order: a voltage that
     * hardly falls makes much of the last digit.
     */
    private static final double ROUNDING = 1e-5;

    /** The same event, counted from a later beginning (s). */
    public StoryEvent since(double beginning) {
        return new StoryEvent(seconds - beginning, kind, part, words, cause);
    }

    /** The same event of the same cause, at a time no further off than rounding puts it. */
    boolean isRoundedTo(StoryEvent other) {
        return equals(new StoryEvent(seconds, other.kind, other.part, other.words, other.cause))
                && isAt(other.seconds);
    }

    /** Whether it happens at this time (s), but for rounding. */
    boolean isAt(double time) {
        return Math.abs(seconds - time) <= ROUNDING * Math.abs(time);
    }

    /** What sort of event. */
    public enum Kind {
        FAILURE,
        PROTECTOR_OPENS,
        WIRE_OVERHEATS,
        WIRE_MELTS,
        /** An over-voltage guard joins its feed to ground. */
        GUARD_SHORTS,
        CONTACTS_CLOSE,
        CONTACTS_OPEN,
        /** A load that runs now and then is switched on. */
        LOAD_STARTS,
        LOAD_STOPS,
        LOAD_RESTARTS,
        /** It works on a battery of its own, and shows that. */
        LOAD_ON_ITS_OWN,
        LOAD_FED_AGAIN,
        LOAD_DESTROYED,
        BATTERY_EMPTY,
        BATTERY_DISCONNECTS,
        BATTERY_RECONNECTS,
        /** It is overcharged, and will not bear that for long. */
        BATTERY_GASSES,
        CHARGING_BLOCKED,
        CHARGING_ALLOWED,
        /** One battery pours into another faster than in an hour. */
        BATTERIES_EQUALISE,
        SOURCE_STARTS,
        SOURCE_STOPS,
        /** It goes on, but not so that anything can be relied on. */
        SOURCE_UNSTEADY,
        LOAD_DUMP,
        CUE,
        PILOT,
        AUTOMATIC,
        ENGINE_INTERRUPTED,
        ENGINE_RECOVERS,
        ENGINE_STOPS,
        ENGINE_RESTARTS,
        CHATTER,
        PHASE,
        CRANKING,
        CRANKING_FAILS,
        /** Stands for rounds that are the same as those told. */
        REPEATS,
        /** What follows cannot be computed. */
        UNTOLD;

        /** Whether the pilot's hand does it. */
        public boolean isAct() {
            return this == PILOT || this == CRANKING;
        }
    }
}
