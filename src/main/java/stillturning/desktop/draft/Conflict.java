package stillturning.desktop.draft;

import java.util.List;
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
    public enum KeptText {
        MINE,
        THEIRS
    }

    /**
     * A place where both changed the same lines.
     *
     * @param line where it begins in the text before both, counted from 1
     */
    public record Dispute(int line, String mine, String theirs, String before) {}

    /** The places to choose in, from top to bottom; empty where one of the two deleted the file. */
    public List<Dispute> disputes() {
        return mine.isPresent() && theirs.isPresent()
                ? LineMerge.disputes(base.orElse(""), mine.get(), theirs.get())
                : List.of();
    }
}
