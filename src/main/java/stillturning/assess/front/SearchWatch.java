package stillturning.assess.front;

import java.util.List;
import java.util.Optional;

/** Follows a search, remembers what was tried, and may end it. */
public interface SearchWatch {

    /** Nobody watches. */
    SearchWatch NOBODY = new SearchWatch() {};

    /**
     * What an earlier search with the same limits found of a thing, by the way to it; asked from
     * any thread.
     */
    default Optional<TrialResult> known(String way) {
        return Optional.empty();
    }

    /** A thing was looked at; told in the order of the search. */
    default void done(String way, TrialResult trial) {}

    /** A round is over. */
    default void seen(Tally tally, List<List<Double>> front) {}

    /** Whether to end now; asked between two rounds. */
    default boolean enough() {
        return false;
    }
}
