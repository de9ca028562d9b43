package stillturning.cli.decide;

import java.util.List;
import stillturning.cli.study.CandidateNames;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.PairWork;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.json.JsonReport;
import stillturning.report.pair.PairBlocks;
import stillturning.report.pair.PairQuestion;
import stillturning.report.terminal.BlockText;
import stillturning.story.UntoldStory;

/** Two candidates of a study side by side. */
record Between(PairQuestion pair) implements Answer {

    /**
     * Assesses both and their mixes.
     *
     * @param names two candidates as a person calls them
     * @throws Refusal if one is not there, both are the same, or one cannot be computed
     */
    static Between of(FoundStudy found, List<String> names, CommandContext context) {
        return new Between(of(work(found.study(), names).marked(found.read()), context));
    }

    /**
     * The work that it takes.
     *
     * @throws Refusal if one is not there, or both are the same
     */
    static PairWork work(Study study, List<String> names) {
        List<Candidate> two = names.stream().map(name -> CandidateNames.find(study, name)).toList();
        if (two.get(0).equals(two.get(1))) {
            throw new Refusal("--between needs two candidates; both names mean " + two.get(0).id());
        }
        return new PairWork(study, two.get(0), two.get(1));
    }

    /**
     * Does the work, telling how far it is where somebody waits.
     *
     * @throws Refusal if one of the two cannot be computed
     */
    static PairQuestion of(PairWork work, CommandContext context) {
        try (Progress progress =
                Progress.over(work.steps(), "candidates and mixes assessed", context)) {
            return work.done(progress);
        } catch (UntoldStory e) {
            throw new Refusal(String.valueOf(e.getMessage()));
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
