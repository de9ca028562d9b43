package stillturning.cli.decide;

import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.Guessing;

/** Whether to try which guesses matter. */
final class GuessOptions {

    private static final int MOST_DRAWS = 4096;

    @Option(
            names = "--guesses",
            description =
                    "Also try each guess of the study's files along its range, or each other class:"
                            + " which turn who is first or a verdict, how likely, from where on, and"
                            + " how to find them out. Takes a while.")
    private boolean own;

    @Option(
            names = "--catalogue-guesses",
            description =
                    "The same, with the guesses of the program's catalogue too. Takes much longer.")
    private boolean catalogue;

    @Option(
            names = "--draws",
            paramLabel = "NUMBER",
            description =
                    "Also put all guesses anywhere in their ranges at once, so many times, and say"
                            + " how often each candidate is then first. Takes a few seconds each.")
    private int draws;

    /** What trying them brings, if it is asked for. */
    Optional<Guesses> tried(FoundStudy found, Assessment assessment, CommandContext context) {
        if (draws < 0 || draws > MOST_DRAWS) {
            throw new Refusal("--draws " + draws + ": give a number from 1 to " + MOST_DRAWS);
        }
        if (!own && !catalogue && draws == 0) {
            return Optional.empty();
        }
        Doubts doubts = new Guessing(found.reader(), found.read()).doubts(catalogue).drawn(draws);
        try (Progress progress =
                Progress.over(doubts.trials(), "trials with another guess done", context)) {
            return Optional.of(Assess.guesses(assessment, doubts, progress));
        }
    }
}
