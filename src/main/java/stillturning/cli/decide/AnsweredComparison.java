package stillturning.cli.decide;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.SoundCandidates;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.dossier.SizedCandidates;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstQuestion;
import stillturning.sizing.result.SizingReport;

/**
 * The candidates of a study ranked, and the answer on one screen.
 *
 * @param full whether every table is asked for
 */
record AnsweredComparison(Comparison comparison, FirstAnswer first, boolean full)
        implements Answer {

    static AnsweredComparison of(
            SoundCandidates sound, Comparison comparison, boolean full, CommandContext context) {
        Assessment assessment = comparison.assessment();
        FirstQuestion question =
                new FirstQuestion(
                        assessment,
                        StudyAssessment.withEqualBatteries(assessment, context),
                        sizesOfLeader(sound.found(), assessment),
                        comparison.guesses(),
                        sound.mistaken().stream()
                                .map(m -> new LeftOut(m.file(), m.reason()))
                                .toList());
        return new AnsweredComparison(comparison, question.answer(), full);
    }

    private static Optional<SizingReport> sizesOfLeader(FoundStudy found, Assessment assessment) {
        return assessment
                .ranking()
                .flatMap(ranking -> found.study().candidate(ranking.leader().name()))
                .flatMap(c -> SizedCandidates.quickly(found.study(), c, found.read()));
    }

    @Override
    public String json() {
        return comparison.json(Optional.of(first));
    }

    @Override
    public void print(Output out) {
        if (full) {
            comparison.print(out);
            leftOut(first.leftOut(), out);
        } else {
            comparison.mistakes().print(out);
            out.lines(new FirstScreen(first).lines());
        }
    }

    /** Candidates with mistakes; those that could not be computed stand above already. */
    private void leftOut(List<LeftOut> all, Output out) {
        int unassessed = comparison.assessment().unassessed().size();
        all.stream()
                .limit(all.size() - unassessed)
                .forEach(one -> out.paragraph(one.candidate() + " is left out: " + one.reason()));
    }
}
