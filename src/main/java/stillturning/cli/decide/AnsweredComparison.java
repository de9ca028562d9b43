package stillturning.cli.decide;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.SoundCandidates;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.dossier.JointSearch;
import stillturning.dossier.MarkedValues;
import stillturning.dossier.SizedCandidates;
import stillturning.reliability.runup.Card;
import stillturning.report.answer.AnswerBlocks;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstQuestion;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.terminal.BlockText;

/**
 * The candidates of a study ranked, and the answer on one screen.
 *
 * @param full whether every table is asked for
 */
record AnsweredComparison(RankingAnswer comparison, FirstAnswer first, boolean full)
        implements Answer {

    /**
     * How much is asked.
     *
     * @param full whether every table is
     * @param runUp whether the checks are counted that the first one needs before each flight
     */
    record Extent(boolean full, boolean runUp) {}

    static AnsweredComparison of(
            SoundCandidates sound,
            RankingAnswer comparison,
            Extent extent,
            CommandContext context) {
        Assessment assessment = comparison.assessment();
        FirstQuestion question =
                new FirstQuestion(
                                assessment,
                                StudyAssessment.withEqualBatteries(assessment, context),
                                SizedCandidates.ofFirst(assessment, sound.found().read()),
                                comparison.guesses(),
                                sound.mistaken())
                        .marked(MarkedValues.ofFirstTwo(assessment, sound.found().read()))
                        .checked(
                                extent.runUp
                                        ? card(sound.found(), assessment, context)
                                        : Optional.empty());
        return new AnsweredComparison(comparison, question.answer(), extent.full);
    }

    /** The checks that the first one needs, as the run-up card has them. */
    private static Optional<Card> card(
            FoundStudy found, Assessment assessment, CommandContext context) {
        return assessment
                .ranking()
                .map(ranking -> found.only(Optional.of(ranking.leader().name())))
                .map(first -> ResumedSearch.of(first, JointSearch.PAIRS, Optional.empty(), context))
                .flatMap(work -> work.found().stream().findFirst())
                .map(CombinedFindings::card);
    }

    @Override
    public String json() {
        return comparison.json(Optional.of(first));
    }

    @Override
    public void print(Output out) {
        if (full) {
            comparison.print(out);
            out.section("The first screen in full")
                    .lines(BlockText.lines(AnswerBlocks.of(first, ""), out.paint()));
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
