package stillturning.cli.decide;

import java.util.List;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.Attribution;
import stillturning.assess.exchange.Exchange;
import stillturning.assess.exchange.Group;
import stillturning.assess.ranking.RankingResult;
import stillturning.cli.study.CandidateNames;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.json.JsonReport;
import stillturning.report.pair.PairBlocks;
import stillturning.report.pair.PairQuestion;
import stillturning.report.terminal.BlockText;

/** Two candidates of a study side by side. */
record Between(PairQuestion pair) implements Answer {

    /**
     * Assesses both and their mixes.
     *
     * @param names two candidates as a person calls them
     * @throws Refusal if one is not there, both are the same, or one cannot be computed
     */
    static Between of(FoundStudy found, List<String> names, CommandContext context) {
        Study study = found.study();
        List<Candidate> two = names.stream().map(name -> CandidateNames.find(study, name)).toList();
        if (two.get(0).equals(two.get(1))) {
            throw new Refusal("--between needs two candidates; both names mean " + two.get(0).id());
        }
        Study alone =
                new Study(
                        study.id(),
                        study.heading(),
                        study.aircraft(),
                        study.goals().withoutBaseline(),
                        two);
        Assessment assessed = StudyAssessment.of(alone, context);
        if (!assessed.unassessed().isEmpty()) {
            throw new Refusal(
                    assessed.unassessed().get(0).candidate()
                            + " could not be computed: "
                            + assessed.unassessed().get(0).reason());
        }
        RankingResult ranking = assessed.ranking().orElseThrow();
        return new Between(new PairQuestion(assessed, ranking, mixes(assessed, context)));
    }

    private static Attribution mixes(Assessment two, CommandContext context) {
        int groups =
                Math.min(
                        Group.MOST,
                        Exchange.differences(
                                        two.appraisals().get(0).candidate(),
                                        two.appraisals().get(1).candidate())
                                .size());
        try (Progress progress = Progress.over(1 << groups, "mixes assessed", context)) {
            return new Exchange(two)
                    .all(two.appraisals().get(0), two.appraisals().get(1), progress);
        }
    }

    int exitCode() {
        return pair.ranking().leader().missedGates().isEmpty()
                ? ExitCode.FINE
                : ExitCode.REQUIREMENT_MISSED;
    }

    @Override
    public String json() {
        return JsonReport.between(pair);
    }

    @Override
    public void print(Output out) {
        out.lines(BlockText.lines(new PairBlocks(pair).all(), out.paint()));
    }
}
