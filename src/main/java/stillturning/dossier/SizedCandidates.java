package stillturning.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Selectivity;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/**
 * The sizes of some of a study's candidates.
 *
 * @param untold candidates that cannot be computed, with the reason
 */
public record SizedCandidates(List<SizingReport> reports, List<String> untold) {

    public SizedCandidates {
        reports = List.copyOf(reports);
        untold = List.copyOf(untold);
    }

    /**
     * Checks them.
     *
     * @param progress told the id of each candidate when it is done
     */
    public static SizedCandidates of(
            Study study, ReadStudy read, List<Candidate> candidates, Consumer<String> progress) {
        List<SizingReport> reports = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        for (Candidate candidate : candidates) {
            add(study, read, candidate, reports, untold);
            progress.accept(candidate.id());
        }
        return new SizedCandidates(reports, untold);
    }

    /** Which of a candidate's protectors may open before whom, if it can be assessed. */
    public static Optional<Selectivity> selectivity(Study study, Candidate candidate) {
        Study alone =
                new Study(
                        study.id(),
                        study.heading(),
                        study.aircraft(),
                        study.goals(),
                        List.of(candidate));
        return Assess.of(alone).appraisals().stream().map(Appraisal::selectivity).findFirst();
    }

    /** The sizes of a candidate with nothing wrong; absent if they cannot be computed. */
    public static Optional<SizingReport> quickly(Study study, Candidate candidate, ReadStudy read) {
        try {
            return Optional.of(
                    Sizing.of(
                            study,
                            candidate,
                            read.sizes().installation(),
                            SurveyDepth.NOTHING_WRONG));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    /** The sizes with nothing wrong of the one that comes first, if they can be computed. */
    public static Optional<SizingReport> ofFirst(Assessment assessment, ReadStudy read) {
        return assessment
                .ranking()
                .flatMap(ranking -> assessment.study().candidate(ranking.leader().name()))
                .flatMap(first -> quickly(assessment.study(), first, read));
    }

    private static void add(
            Study study,
            ReadStudy read,
            Candidate candidate,
            List<SizingReport> reports,
            List<String> untold) {
        try {
            reports.add(
                    Sizing.of(
                            study,
                            candidate,
                            read.sizes().installation(),
                            SurveyDepth.SINGLE_FAILURES));
        } catch (UntoldStory e) {
            untold.add(candidate.id() + " could not be computed: " + e.getMessage());
        }
    }

    /** Whether some limit is broken, or something could not be computed. */
    public boolean wrong() {
        return !untold.isEmpty() || reports.stream().anyMatch(r -> r.wrong() > 0);
    }
}
