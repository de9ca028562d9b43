package stillturning.reliability.groundtest;

import java.util.Optional;
import stillturning.story.StoryEvent;

/**
 * A single failure that no step shows.
 *
 * @param failure its name
 * @param harm what it would do, where that is why
 */
public record NotShown(String failure, Why why, Optional<StoryEvent> harm) {

    /** Why not. */
    public enum Why {
        /** It does not only open something: metal would have to touch, weld, sag or run away. */
        OPENS_NOTHING,
        /** Nothing flows there while the aircraft stands so, so nothing changes. */
        NOTHING_CHANGES,
        /** Opening it would do harm. */
        HARMS,
        /** Put together again, not all would be as before. */
        LINGERS,
        /** Nothing that a hand can open does the same. */
        NO_HAND,
        /** It cannot be computed. */
        UNTOLD
    }
}
