package stillturning.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.Doubt;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.files.Assumption;
import stillturning.files.Variation;
import stillturning.yaml.Origin;

/** Whether to try which guesses matter. */
final class GuessOptions {

    @Option(
            names = "--guesses",
            description =
                    "Also try each guess of the study's files a fifth lower and higher, and say"
                            + " which of them matter. Takes a while.")
    private boolean own;

    @Option(
            names = "--catalogue-guesses",
            description =
                    "The same, with the guesses of the program's catalogue too. Takes much longer.")
    private boolean catalogue;

    /** What trying them brings, if it is asked for. */
    Optional<Guesses> tried(FoundStudy found, Assessment assessment, Surroundings around) {
        if (!own && !catalogue) {
            return Optional.empty();
        }
        List<Doubt> doubts =
                found.read().assumptions().stream()
                        .filter(this::asked)
                        .map(a -> doubt(found, a))
                        .toList();
        try (Progress progress =
                Progress.over(2 * doubts.size(), "trials with another guess done", around)) {
            return Optional.of(Assess.guesses(assessment, doubts, progress));
        }
    }

    private boolean asked(Assumption assumption) {
        return assumption.origin() == Origin.GUESSED || (catalogue && assumption.isGuess());
    }

    private static Doubt doubt(FoundStudy found, Assumption guess) {
        return new Doubt(
                new Guess(guess.file(), guess.path(), guess.text()),
                factor ->
                        found.reader()
                                .study(new Variation(guess.file(), guess.path(), factor))
                                .study());
    }
}
