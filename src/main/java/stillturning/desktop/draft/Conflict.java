package stillturning.desktop.draft;

import java.util.Optional;

/**
 * A file that was changed here and outside, in places that touch.
 *
 * @param mine as it is here; empty if it was deleted here
 * @param theirs as it is on disk; empty if it was deleted there
 * @param base as it was before both; empty if it was not there
 */
public record Conflict(
        String file, Optional<String> mine, Optional<String> theirs, Optional<String> base) {

    /** Whose text is kept. */
    public enum Choice {
        MINE,
        THEIRS
    }
}
