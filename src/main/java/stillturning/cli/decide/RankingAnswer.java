package stillturning.cli.decide;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stillturning.assess.Assessment;
import stillturning.assess.Guesses;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.Mistakes;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.quantity.UnitSystem;
import stillturning.report.FirstPlace;
import stillturning.report.Reasons;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.json.JsonReport;
import stillturning.report.ranking.ComplexityTexts;
import stillturning.report.ranking.ScaleTexts;
import stillturning.report.table.TextTable;
import stillturning.report.terminal.GuessTexts;
import stillturning.report.terminal.OtherFindings;
import stillturning.report.terminal.TerminalTables;

/**
 * The candidates of a study ranked.
 *
 * @param mistakes what is wrong before anything fails
 * @param guesses which guesses matter, if that was asked
 */
record RankingAnswer(Mistakes mistakes, Assessment assessment, Optional<Guesses> guesses)
        implements Answer {

    static RankingAnswer of(FoundStudy found, GuessOptions guesses, CommandContext context) {
        return of(found, basis -> basis, guesses, context);
    }

    static RankingAnswer of(
            FoundStudy found,
            UnaryOperator<Assessment> preferring,
            GuessOptions guesses,
            CommandContext context) {
        Assessment assessment = preferring.apply(StudyAssessment.of(found, context));
        return new RankingAnswer(
                found.mistakes(), assessment, guesses.tried(found, assessment, context));
    }

    /**
     * Whether the first in the ranking misses a hard requirement, nothing could be ranked, or
     * something is wrong before anything fails.
     */
    int exitCode() {
        boolean leaderMeetsAll =
                assessment
                        .ranking()
                        .map(ranking -> ranking.leader().missedGates().isEmpty())
                        .orElse(false);
        return mistakes.exitCode(leaderMeetsAll ? ExitCode.FINE : ExitCode.REQUIREMENT_MISSED);
    }

    /** The whole of it as JSON, with the first answer if it was asked. */
    String json(Optional<FirstAnswer> first) {
        return JsonReport.decide(assessment, guesses, first);
    }

    @Override
    public String json() {
        return json(Optional.empty());
    }

    /** Title, what cannot be computed, requirements, ranking, reasons and guesses. */
    @Override
    public void print(Output out) {
        mistakes.print(out);
        StudyAssessment.heading(assessment, out);
        assessment.ranking().ifPresent(ranking -> leader(ranking, out));
        if (!assessment.asksForAnything()) {
            out.section("Hard requirements")
                    .paragraph(
                            "The study has none, so none can be missed: the ranking alone says who"
                                    + " is first.");
        } else {
            out.section("Hard requirements")
                    .lines(TerminalTables.requirements(assessment, out.paint()));
        }
        assessment.ranking().ifPresent(ranking -> ranked(ranking, out));
        List<String> warnings = OtherFindings.missingWarnings(assessment.appraisals());
        if (!warnings.isEmpty()) {
            out.section("Warnings to add");
            warnings.forEach(out::paragraph);
        }
        List<String> cold = OtherFindings.coldStarts(assessment.appraisals());
        if (!cold.isEmpty()) {
            out.section("Started in the cold with tired batteries");
            cold.forEach(out::paragraph);
        }
        guesses.ifPresent(tried -> guesses(tried, out));
    }

    private void leader(RankingResult ranking, Output out) {
        FirstPlace first = new FirstPlace(assessment, ranking);
        String all = first.shared() ? "; they meet" : "; it meets";
        String met =
                !assessment.asksForAnything()
                        ? "; the study sets no hard requirement."
                        : ranking.leader().missedGates().isEmpty()
                                ? all + " every hard requirement."
                                : "; no candidate meets every hard requirement.";
        String who =
                first.shared()
                        ? "First place is shared: " + first.titles()
                        : "First in the ranking: " + title(ranking.leader());
        out.line("").paragraph(who + met);
        first.sharing().forEach(out::paragraph);
    }

    private void ranked(RankingResult ranking, Output out) {
        out.section("Ranking")
                .lines(TerminalTables.ranking(assessment, out.paint()))
                .lines(TerminalTables.rankingNotes(assessment));
        scales(new ScaleTexts(assessment, ranking, UnitSystem.METRIC), out);
        complexity(out);
        out.section("Why");
        Reasons reasons = new Reasons(assessment, ranking);
        for (Standing standing : ranking.standings()) {
            out.line("  " + standing.rank() + "  " + title(standing))
                    .paragraph("     ", reasons.of(standing.name()));
        }
    }

    private static void scales(ScaleTexts texts, Output out) {
        out.section("How values count")
                .paragraph(ScaleTexts.METHOD)
                .lines(TextTable.lines(texts.table(), out.paint()));
        texts.beyond().forEach(out::paragraph);
    }

    private void complexity(Output out) {
        ComplexityTexts texts = new ComplexityTexts(assessment);
        out.section("What complexity is made of");
        texts.method().forEach(out::paragraph);
        out.paragraph(texts.reasons());
        out.lines(TextTable.lines(texts.counts(), out.paint()));
        texts.sensitivity().forEach(out::paragraph);
        out.section("What the pilot has to do").lines(TextTable.lines(texts.pilot(), out.paint()));
        texts.byHeart().forEach(out::paragraph);
    }

    private String title(Standing standing) {
        return assessment
                .of(standing.name())
                .map(a -> a.candidate().title())
                .orElse(standing.name());
    }

    private void guesses(Guesses tried, Output out) {
        GuessTexts texts = new GuessTexts(assessment, tried);
        out.section("What to find out next")
                .paragraph(texts.method())
                .lines(texts.table(out.paint()));
        texts.finding().forEach(out::paragraph);
        texts.spread().forEach(out::paragraph);
        texts.rest().forEach(out::paragraph);
    }
}
