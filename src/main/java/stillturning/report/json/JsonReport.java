package stillturning.report.json;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Elsewhere;
import stillturning.assess.Guesses;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Study;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.groundtest.PlannedTest;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.SameEnding;
import stillturning.report.joint.SharedFindings;
import stillturning.report.pair.PairQuestion;
import stillturning.sizing.result.SizingReport;

/**
 * Results as JSON, for other programs. SI units stand in the names of the fields; a time that
 * nothing limits is {@code null} and the field beside it says so; numbers carry six digits. The
 * schemas are the resources in {@code /stillturning/report}.
 */
public final class JsonReport {

    /** A story inside another document. */
    public static final JsonType<Verdict> STORY_INSIDE = StoryJson.STORY.inside();

    /** A range inside another document. */
    public static final JsonType<EnduranceRange> RANGE_INSIDE = RangeJson.RANGE.inside();

    private JsonReport() {}

    /** The ranked comparison, with what trying the guesses brought if they were tried. */
    public static String decide(Assessment assessment, Optional<Guesses> guesses) {
        return decide(assessment, guesses, Optional.empty());
    }

    /**
     * The ranked comparison.
     *
     * @param guesses what trying them brought, if they were tried
     * @param first the answer on one screen, if it was asked
     */
    public static String decide(
            Assessment assessment, Optional<Guesses> guesses, Optional<FirstAnswer> first) {
        return DecideJson.DECISION.text(new DecideJson.Decision(assessment, guesses, first));
    }

    /** Two candidates side by side. */
    public static String between(PairQuestion pair) {
        return BetweenJson.BETWEEN.text(pair);
    }

    /** One failure of one candidate. */
    public static String story(Verdict verdict) {
        return StoryJson.STORY.text(verdict);
    }

    /** What the study's own cases do to each candidate. */
    public static String cases(Study study, List<CandidateCases> cases) {
        return CasesJson.CASES.text(new StudyAnswer<>(study, cases, List.of()));
    }

    /**
     * Failures at every moment of the flight.
     *
     * @param untold failures that could not be computed, with the reason
     */
    public static String phases(Study study, List<PhaseVerdicts> told, List<String> untold) {
        return MomentsJson.PHASES.text(
                new StudyAnswer<>(
                        study,
                        told.stream().map(of -> new MomentsJson.Everywhere(study, of)).toList(),
                        untold));
    }

    /** Failures that do worse elsewhere in the flight. */
    public static String elsewhere(Study study, Elsewhere found) {
        return MomentsJson.ELSEWHERE.text(new StudyAnswer<>(study, found.worse(), found.untold()));
    }

    /** How sure the endurance after one failure is. */
    public static String range(EnduranceRange range) {
        return RangeJson.RANGE.text(range);
    }

    /**
     * Every failure of every candidate.
     *
     * @param endings those that stop the engine, by what mends them
     */
    public static String matrix(Assessment assessment, List<SameEnding> endings) {
        return MatrixJson.MATRIX.text(new MatrixJson.MatrixData(assessment, endings));
    }

    /** The sizes of some of a study's candidates. */
    public static String sizes(String study, List<SizingReport> reports) {
        return SizesJson.SIZES.text(new SizesJson.Sized(study, reports));
    }

    /**
     * What events do together in some candidates, and how likely it is.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String pairs(Study study, List<CombinedFindings> found, List<String> untold) {
        return PairsJson.PAIRS.text(new StudyAnswer<>(study, found, untold));
    }

    /**
     * Failures of which nobody sees anything.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String latent(Study study, List<CombinedFindings> found, List<String> untold) {
        return RunUpJson.LATENT.text(new StudyAnswer<>(study, found, untold));
    }

    /**
     * Cards for the run-up.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String runUp(Study study, List<CombinedFindings> found, List<String> untold) {
        return RunUpJson.RUN_UP.text(new StudyAnswer<>(study, found, untold));
    }

    /**
     * Plans of tests on the ground.
     *
     * @param untold candidates that could not be planned, with the reason
     */
    public static String groundTests(Study study, List<PlannedTest> plans, List<String> untold) {
        return GroundTestJson.GROUND_TESTS.text(new StudyAnswer<>(study, plans, untold));
    }

    /** Common causes, and what the shape of each candidate says. */
    public static String causes(Study study, List<SharedFindings> shared) {
        return CausesJson.CAUSES.text(new StudyAnswer<>(study, shared, List.of()));
    }
}
