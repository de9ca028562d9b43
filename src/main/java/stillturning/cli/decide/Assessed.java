package stillturning.cli.decide;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.cli.terminal.Progress;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.Assessment.Unassessed;
import stillturning.assess.Guesses;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.GuessTexts;
import stillturning.report.NormalFlightTexts;
import stillturning.report.Reasons;
import stillturning.report.TerminalTables;

/** A whole study assessed, and the ranked comparison as text. */
public record Assessed(Assessment assessment) {

    /** Assesses a study, telling how far it is where somebody waits. */
    public static Assessed of(Study study, CommandContext context) {
        try (Progress progress =
                Progress.over(study.candidates().size(), "candidates assessed", context)) {
            return new Assessed(Assess.of(study, progress));
        }
    }

    /** Whether the first in the ranking misses a hard requirement, or nothing could be ranked. */
    public int exitCode() {
        boolean leaderMeetsAll =
                assessment
                        .ranking()
                        .map(ranking -> ranking.leader().missedGates().isEmpty())
                        .orElse(false);
        return leaderMeetsAll ? ExitCode.FINE : ExitCode.REQUIREMENT_MISSED;
    }

    /** Title, what cannot be computed, requirements, ranking and reasons. */
    public void comparison(Output out) {
        heading(out);
        assessment.ranking().ifPresent(ranking -> answer(ranking, out));
        if (!assessment.study().goals().requirements().isEmpty()) {
            out.section("Hard requirements")
                    .lines(TerminalTables.requirements(assessment, out.paint()));
        }
        assessment.ranking().ifPresent(ranking -> ranked(ranking, out));
    }

    /** Which guesses matter, and how many do not. */
    public void guesses(Guesses guesses, Output out) {
        GuessTexts texts = new GuessTexts(assessment, guesses);
        out.section("Which guesses matter")
                .line(Paragraph.of("", texts.method()))
                .lines(texts.table(out.paint()));
        texts.rest().forEach(line -> out.line(Paragraph.of("", line)));
    }

    /** Title, and every candidate that cannot be computed. */
    public void heading(Output out) {
        Study study = assessment.study();
        out.line(Paragraph.of("", study.heading().title()));
        if (!study.heading().about().isBlank()) {
            out.line(Paragraph.of("", study.heading().about()));
        }
        if (study.heading().invented()) {
            out.line(Cautions.inFull(true).get(0));
        }
        unwell(out);
        for (Unassessed unassessed : assessment.unassessed()) {
            out.line(
                    Paragraph.of(
                            "",
                            unassessed.candidate()
                                    + " could not be computed and is left out: "
                                    + unassessed.reason()));
        }
    }

    private void unwell(Output out) {
        List<Appraisal> unwell =
                assessment.appraisals().stream().filter(a -> a.flight().unwell()).toList();
        if (!unwell.isEmpty()) {
            out.section("Unwell with nothing wrong")
                    .line(Paragraph.of("", NormalFlightTexts.MEANING));
            unwell.forEach(
                    a ->
                            out.findings(
                                    a.candidate().title(), NormalFlightTexts.findings(a.flight())));
        }
    }

    private void ranked(RankingResult ranking, Output out) {
        out.section("Ranking")
                .lines(TerminalTables.ranking(assessment, out.paint()))
                .lines(TerminalTables.rankingNotes(assessment));
        out.section("Why");
        Reasons reasons = new Reasons(assessment, ranking);
        for (Standing standing : ranking.standings()) {
            out.line("  " + standing.rank() + "  " + title(standing))
                    .line(Paragraph.of("     ", reasons.of(standing.name())));
        }
    }

    private void answer(RankingResult ranking, Output out) {
        Standing leader = ranking.leader();
        String met =
                leader.missedGates().isEmpty()
                        ? "; it meets every hard requirement."
                        : "; no candidate meets every hard requirement.";
        out.line("").line(Paragraph.of("", "First in the ranking: " + title(leader) + met));
    }

    private String title(Standing standing) {
        return assessment
                .of(standing.name())
                .map(a -> a.candidate().title())
                .orElse(standing.name());
    }
}
