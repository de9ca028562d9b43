package stillturning.cli;

import java.util.List;
import java.util.Optional;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.timeline.Normal;

/**
 * What is known about a study before anything fails.
 *
 * @param flying each candidate in normal flight; empty if the study has problems
 */
record Check(ReadStudy read, List<Flying> flying) {

    /**
     * A candidate with nothing wrong.
     *
     * @param normal absent if it cannot be computed
     * @param reason why it cannot
     */
    record Flying(Candidate candidate, Optional<Normal> normal, String reason) {

        static Flying found(Candidate candidate, Normal normal) {
            return new Flying(candidate, Optional.of(normal), "");
        }

        static Flying untold(Candidate candidate, String reason) {
            return new Flying(candidate, Optional.empty(), reason);
        }

        boolean engineRuns() {
            return normal.map(Normal::engineRuns).orElse(false);
        }
    }

    Check {
        flying = List.copyOf(flying);
    }

    int exitCode() {
        if (read.study().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        return flying.stream().allMatch(Flying::engineRuns)
                ? ExitCode.FINE
                : ExitCode.REQUIREMENT_MISSED;
    }
}
