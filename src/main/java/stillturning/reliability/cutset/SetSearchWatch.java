package stillturning.reliability.cutset;

import java.util.Optional;

/** Follows a search, remembers what is done, and may call it off. Asked by several threads. */
public interface SetSearchWatch {

    /** Nobody watches. */
    SetSearchWatch NOBODY = new SetSearchWatch() {};

    /** What an earlier search has already found in a block. */
    default Optional<Searched> known(SearchBlock block) {
        return Optional.empty();
    }

    /** A block is done; blocks end in any order. */
    default void done(Searched searched) {}

    /** Whether to stop after the sets that are being asked about. */
    default boolean cancelled() {
        return false;
    }
}
