package stillturning.together;

import stillturning.failure.Failure;

/**
 * Something that can go wrong, alone or together with others.
 *
 * @param failure what it does; nothing for a pilot who does nothing
 */
public record Event(Kind kind, String name, Failure failure) {

    /** What sort of thing. */
    public enum Kind {
        /** One failure mode of one part. */
        FAILURE,
        /** One thing that takes several parts. */
        CAUSE,
        /** A switch that was left in a wrong position. */
        LEFT_SWITCH,
        /** A pilot who does nothing about what he sees. */
        IDLE_PILOT
    }
}
