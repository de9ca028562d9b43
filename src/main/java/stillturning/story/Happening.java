package stillturning.story;

/**
 * One event of a story.
 *
 * @param seconds when, counted from the failure (s)
 * @param part part, procedure or cue that it happens to
 * @param words what happens, complete with its numbers
 * @param cause index in the story of the event that led to it; -1 for none
 */
public record Happening(double seconds, Kind kind, String part, String words, int cause) {

    /** What sort of event. */
    public enum Kind {
        FAILURE,
        PROTECTOR_OPENS,
        WIRE_OVERHEATS,
        WIRE_MELTS,
        CONTACTS_CLOSE,
        CONTACTS_OPEN,
        LOAD_STOPS,
        LOAD_RESTARTS,
        LOAD_DESTROYED,
        BATTERY_EMPTY,
        BATTERY_DISCONNECTS,
        SOURCE_STARTS,
        SOURCE_STOPS,
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
        CRANKING_FAILS
    }
}
