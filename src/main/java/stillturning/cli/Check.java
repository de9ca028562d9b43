package stillturning.cli;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Undisturbed;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.report.NothingWrong;
import stillturning.sizing.SizingReport;
import stillturning.story.Normal;

/**
 * What is known about a study before anything fails.
 *
 * @param flying each candidate in normal flight; empty if the study has problems
 * @param sizes sizes of each candidate that can be computed, with nothing wrong
 */
record Check(ReadStudy read, List<Flying> flying, List<SizingReport> sizes) {

    /**
     * A candidate with nothing wrong.
     *
     * @param flight absent if it cannot be computed
     * @param reason why it cannot
     */
    record Flying(Candidate candidate, Optional<Undisturbed> flight, String reason) {

        static Flying found(Candidate candidate, Undisturbed flight) {
            return new Flying(candidate, Optional.of(flight), "");
        }

        static Flying untold(Candidate candidate, String reason) {
            return new Flying(candidate, Optional.empty(), reason);
        }

        Optional<Normal> normal() {
            return flight.map(Undisturbed::normal);
        }

        List<String> findings() {
            return flight.map(NothingWrong::findings).orElse(List.of());
        }

        boolean engineRuns() {
            return normal().map(Normal::engineRuns).orElse(false);
        }

        boolean engineRunsOn() {
            return flight.map(Undisturbed::engineRunsOn).orElse(false);
        }
    }

    Check {
        flying = List.copyOf(flying);
        sizes = List.copyOf(sizes);
    }

    int exitCode() {
        if (read.study().isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        return flying.stream().allMatch(Flying::engineRunsOn)
                ? ExitCode.FINE
                : ExitCode.REQUIREMENT_MISSED;
    }
}
