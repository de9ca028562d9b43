package stillturning.cli.decide;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.GuessVariation;
import stillturning.assess.Guesses;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.dossier.Guessing;

/** Whether to try which guesses matter. */
final class GuessOptions {

    @Option(
            names = "--guesses",
            description =
                    "Also try each guess of the study's files a fifth lower and higher, or each other"
                            + " class, and say which of them matter. Takes a while.")
    private boolean own;

    @Option(
            names = "--catalogue-guesses",
            description =
                    "The same, with the guesses of the program's catalogue too. Takes much longer.")
    private boolean catalogue;

    private static int trials(List<GuessVariation> doubts) {
        return doubts.stream().mapToInt(GuessVariation::trials).sum();
    }

    /** What trying them brings, if it is asked for. */
    Optional<Guesses> tried(FoundStudy found, Assessment assessment, CommandContext context) {
        if (!own && !catalogue) {
            return Optional.empty();
        }
        List<GuessVariation> doubts = new Guessing(found.reader(), found.read()).doubts(catalogue);
        try (Progress progress =
                Progress.over(trials(doubts), "trials with another guess done", context)) {
            return Optional.of(Assess.guesses(assessment, doubts, progress));
        }
    }
}
