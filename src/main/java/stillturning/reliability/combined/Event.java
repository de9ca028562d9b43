package stillturning.reliability.combined;

import java.util.Optional;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;

/**
 * Something that can go wrong, alone or together with others.
 *
 * @param failure what it does; nothing for a pilot who does nothing
 * @param cause what takes several parts, if that is what it is
 */
public record Event(EventKind kind, String name, Failure failure, Optional<Cause> cause) {

    /** One that no common cause stands behind. */
    Event(EventKind kind, String name, Failure failure) {
        this(kind, name, failure, Optional.empty());
    }

    /** What sort of thing. */
    public enum EventKind {
        /** One failure mode of one part. */
        FAILURE,
        /** One thing that takes several parts. */
        CAUSE,
        /** A lamp that shows nothing any more. */
        DEAD_LAMP,
        /** A switch, or all of one line of a checklist, left in a wrong position. */
        LEFT_SWITCH,
        /** A drill carried out although nothing calls for it. */
        NEEDLESS_DRILL,
        /** A pilot who does nothing about what he sees. */
        IDLE_PILOT
    }

    /** The cue whose lamp is dead, if that is what it is. */
    public Optional<String> deadLamp() {
        return failure.dark().stream().filter(cue -> kind == EventKind.DEAD_LAMP).findFirst();
    }
}
