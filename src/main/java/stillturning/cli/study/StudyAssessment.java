package stillturning.cli.study;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.assess.requirement.Survey;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Output.TitledLines;
import stillturning.cli.terminal.Progress;
import stillturning.dossier.RequirementSurvey;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.MoveTexts;
import stillturning.report.NormalFlightTexts;
import stillturning.report.UntoldTexts;

/** A whole study assessed, and what stands above everything that follows from it. */
public final class StudyAssessment {

    private StudyAssessment() {}

    /** Assesses a study, telling how far it is where somebody waits. */
    public static Assessment of(Study study, CommandContext context) {
        return of(study, Survey.NONE, context);
    }

    /** The same, with what is required of sizes. */
    public static Assessment of(FoundStudy found, CommandContext context) {
        return of(
                found.study(),
                new RequirementSurvey(found.study(), found.read().sizes().installation()),
                context);
    }

    private static Assessment of(Study study, Survey survey, CommandContext context) {
        try (Progress progress =
                Progress.over(study.candidates().size(), "candidates assessed", context)) {
            return Assess.of(study, survey, progress);
        }
    }

    /** What equal batteries change, telling how far it is where somebody waits. */
    public static Optional<EqualBatteries> withEqualBatteries(
            Assessment basis, CommandContext context) {
        try (Progress progress =
                Progress.over(
                        EqualBatteries.mixes(basis), "mixes of batteries assessed", context)) {
            return EqualBatteries.of(basis, progress);
        }
    }

    /** Title, and every candidate that cannot be computed. */
    public static void heading(Assessment assessment, Output out) {
        Study study = assessment.study();
        out.paragraph(study.heading().title());
        if (!study.heading().about().isBlank()) {
            out.paragraph(study.heading().about());
        }
        if (study.heading().invented()) {
            out.line(Cautions.inFull(true).get(0));
        }
        unwell(
                assessment.appraisals().stream()
                        .map(
                                a ->
                                        new TitledLines(
                                                a.candidate().title(),
                                                NormalFlightTexts.findings(a.flight())))
                        .toList(),
                out);
        nearLimit(
                assessment.appraisals().stream()
                        .map(
                                a ->
                                        new TitledLines(
                                                a.candidate().title(),
                                                NormalFlightTexts.nearLimit(a.flight())))
                        .toList(),
                out);
        out.findings(
                UntoldTexts.HEADING,
                UntoldTexts.MEANING,
                assessment.appraisals().stream()
                        .map(a -> new TitledLines(a.candidate().title(), UntoldTexts.findings(a)))
                        .toList());
        out.findings(
                MoveTexts.HEADING,
                MoveTexts.MEANING,
                assessment.appraisals().stream()
                        .map(
                                a ->
                                        new TitledLines(
                                                a.candidate().title(),
                                                MoveTexts.findings(
                                                        a.candidate(), a.cases().harmfulMoves())))
                        .toList());
        assessment.unassessed().forEach(u -> leftOut(u.candidate(), u.reason(), out));
    }

    /** What happens in candidates although nothing fails. */
    public static void unwell(List<TitledLines> findings, Output out) {
        out.findings("Unwell with nothing wrong", NormalFlightTexts.MEANING, findings);
    }

    /** What may open in candidates although nothing fails. */
    public static void nearLimit(List<TitledLines> findings, Output out) {
        out.findings(NormalFlightTexts.NEAR_LIMIT, NormalFlightTexts.NEAR_LIMIT_MEANING, findings);
    }

    /** A candidate that the rest of an answer says nothing about. */
    public static void leftOut(String candidate, String reason, Output out) {
        out.paragraph(candidate + " could not be computed and is left out: " + reason);
    }
}
