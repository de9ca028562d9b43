package stillturning.cli.check;

import stillturning.cli.terminal.ExitCode;
import java.util.List;
import java.util.Optional;
import stillturning.assess.NothingBroken;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.report.NormalFlightTexts;
import stillturning.sizing.SizingReport;
import stillturning.story.NormalFlight;

/**
 * What is known about a study before anything fails.
 *
 * @param flying each candidate in normal flight; empty if the study has problems
 * @param sizes sizes of each candidate that can be computed, with nothing wrong
 */
record StudyCheck(ReadStudy read, List<Flying> flying, List<SizingReport> sizes) {

    /**
     * A candidate with nothing wrong.
     *
     * @param flight absent if it cannot be computed
     * @param reason why it cannot
     */
    record Flying(Candidate candidate, Optional<NothingBroken> flight, String reason) {

        static Flying found(Candidate candidate, NothingBroken flight) {
            return new Flying(candidate, Optional.of(flight), "");
        }

        static Flying untold(Candidate candidate, String reason) {
            return new Flying(candidate, Optional.empty(), reason);
        }

        Optional<NormalFlight> normal() {
            return flight.map(NothingBroken::normal);
        }

        List<String> findings() {
            return flight.map(NormalFlightTexts::findings).orElse(List.of());
        }

        boolean engineRuns() {
            return normal().map(NormalFlight::engineRuns).orElse(false);
        }

        boolean engineRunsOn() {
            return flight.map(NothingBroken::engineRunsOn).orElse(false);
        }
    }

    StudyCheck {
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
