package stillturning.assess.verdict;

import java.util.Map;
import stillturning.story.Story;

/**
 * A move that no procedure of the candidate names, and with which the engine was played to come
 * through a failure after which it is lost otherwise.
 *
 * @param moves position by lever
 * @param story what follows with it
 * @param needless what follows if it is made with nothing wrong
 */
public record UnwrittenMove(Map<String, String> moves, Story story, Story needless) {

    /** A pilot without a checklist moves so late after the first sign (s). A guess. */
    public static final double AFTER_SIGN_SECONDS = 60;

    public UnwrittenMove {
        moves = Map.copyOf(moves);
    }
}
