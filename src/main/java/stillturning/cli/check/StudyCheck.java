package stillturning.cli.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Assess;
import stillturning.assess.HarmfulMoves;
import stillturning.assess.NothingBroken;
import stillturning.cli.study.Mistakes;
import stillturning.cli.terminal.ExitCode;
import stillturning.dossier.SizedCandidates;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.NormalFlightTexts;
import stillturning.sizing.result.SizingReport;
import stillturning.story.NormalFlight;
import stillturning.story.UntoldStory;

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
     * @param drill the drill that takes all power off, if another order does less harm
     * @param reason why it cannot
     */
    record Flying(
            Candidate candidate,
            Optional<NothingBroken> flight,
            Optional<HarmfulMoves> drill,
            String reason) {

        private static Flying of(Study study, Candidate candidate) {
            try {
                NothingBroken flight = Assess.undisturbed(study, candidate);
                return new Flying(
                        candidate, Optional.of(flight), Assess.harmfulDrill(study, candidate), "");
            } catch (UntoldStory e) {
                return new Flying(
                        candidate,
                        Optional.empty(),
                        Optional.empty(),
                        String.valueOf(e.getMessage()));
            }
        }

        Optional<NormalFlight> normal() {
            return flight.map(NothingBroken::normal);
        }

        List<String> givenUp() {
            return normal().map(NormalFlightTexts::givenUp).orElse(List.of());
        }

        List<String> findings() {
            return flight.map(NormalFlightTexts::happenings).orElse(List.of());
        }

        List<String> nearLimit() {
            return flight.map(NormalFlightTexts::nearLimit).orElse(List.of());
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

    /** Flying and sizing. */
    static final int STEPS_A_CANDIDATE = 2;

    /**
     * Looks at a study.
     *
     * @param progress told the id of a candidate after each of its steps, from any thread
     */
    static StudyCheck of(ReadStudy read, Consumer<String> progress) {
        List<Looked> looked =
                read.study().stream()
                        .flatMap(study -> looked(study, read, progress).stream())
                        .toList();
        return new StudyCheck(
                read,
                looked.stream().map(Looked::flying).toList(),
                looked.stream().flatMap(l -> l.sizes.stream()).toList());
    }

    /** What one candidate shows. */
    private record Looked(Flying flying, Optional<SizingReport> sizes) {}

    private static List<Looked> looked(Study study, ReadStudy read, Consumer<String> progress) {
        return study.candidates().parallelStream()
                .map(
                        candidate -> {
                            Flying flying = Flying.of(study, candidate);
                            progress.accept(candidate.id());
                            Optional<SizingReport> sizes =
                                    SizedCandidates.quickly(study, candidate, read);
                            progress.accept(candidate.id());
                            return new Looked(flying, sizes);
                        })
                .toList();
    }

    /** What is wrong though it can be computed. */
    Mistakes mistakes(Study study) {
        return Mistakes.in(study, read);
    }

    int exitCode() {
        boolean runs = flying.stream().allMatch(Flying::engineRunsOn);
        return read.study()
                .map(s -> mistakes(s).exitCode(runs ? ExitCode.FINE : ExitCode.REQUIREMENT_MISSED))
                .orElse(ExitCode.BAD_INPUT);
    }
}
