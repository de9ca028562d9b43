package stillturning.cli.decide;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.decide.AnsweredComparison.Extent;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.SoundCandidates;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;

/** Compares and ranks the candidates of a study. */
@Command(
        name = "decide",
        description =
                "Rank the candidates: hard requirements first, then by visible criteria. One"
                        + " screen: who is first, how firmly, what it breaks, what the next one buys.",
        footer = {
            "  stillturning decide sandpiper",
            "  stillturning decide sandpiper --full",
            "  stillturning decide sandpiper --guesses",
            "  stillturning decide sandpiper --run-up",
            "  stillturning decide sandpiper --knowing \"weight over cost\"",
            "  stillturning decide sandpiper --swing \"endurance 100, weight 60, cost 40\"",
            "  stillturning decide sandpiper --between split-batteries solid-state-split-engine",
            "  stillturning decide architectures/sandpiper --json > ranking.json"
        })
public final class DecideCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private GuessOptions guesses = new GuessOptions();
    @Mixin private SwingOption swing = new SwingOption();
    @Mixin private ImportanceOption importance = new ImportanceOption();

    @Option(
            names = "--full",
            description = "Print every table: requirements with reasons, scales, shares, notes.")
    private boolean full;

    @Option(
            names = "--run-up",
            description =
                    "Also count the checks that the first one needs before each flight, and what"
                            + " none of them shows. Takes a minute or more.")
    private boolean runUp;

    @Option(
            names = "--between",
            arity = "2",
            paramLabel = "CANDIDATE",
            description =
                    "Hold two candidates against each other: what makes the difference, by"
                            + " assessing every mix of them; what a controller does for which load."
                            + " Takes up to a few minutes.")
    private List<String> between = List.of();

    public DecideCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        SoundCandidates sound = asked.soundCandidates(context);
        if (!between.isEmpty()) {
            return between(sound.found());
        }
        RankingAnswer comparison =
                RankingAnswer.of(
                        sound.found(),
                        basis -> importance.applied(swing.applied(basis)),
                        guesses,
                        context);
        new Output(context)
                .answer(
                        AnsweredComparison.of(sound, comparison, new Extent(full, runUp), context),
                        asked.json());
        return comparison.exitCode();
    }

    private int between(FoundStudy found) {
        Between pair = Between.of(found, between, context);
        new Output(context).answer(pair, asked.json());
        return pair.exitCode();
    }
}
