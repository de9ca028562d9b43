package stillturning.assess.requirement;

import java.util.List;
import java.util.Optional;
import stillturning.story.StartAttempt;

/**
 * The engine started again in flight after each single failure.
 *
 * @param failedAfter failures after which it is not
 * @param hardest of the others the one that left least, if anybody kept it
 */
public record Restarts(List<String> failedAfter, Optional<Hardest> hardest) {

    /** A start that came nearest to failing, and the failure before it. */
    public record Hardest(String failure, StartAttempt start) {}

    public Restarts {
        failedAfter = List.copyOf(failedAfter);
    }

    /** Of which nobody knows how near the others came. */
    public static Restarts failing(List<String> failures) {
        return new Restarts(failures, Optional.empty());
    }
}
