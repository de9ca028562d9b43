package stillturning.dossier;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Guess;
import stillturning.assess.GuessVariation;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Assumption;
import stillturning.files.value.Variation;
import stillturning.yaml.notation.Origin;

/** Which guesses of a study can be tried with another value. */
public final class Guessing {

    private final StudyReader reader;
    private final ReadStudy read;

    /**
     * @param reader makes the study anew with another value
     * @param read what it makes of the study as it is
     */
    public Guessing(StudyReader reader, ReadStudy read) {
        this.reader = reader;
        this.read = read;
    }

    /**
     * The guesses, in the order of the files.
     *
     * @param catalogue with those of the program's catalogue
     */
    public List<GuessVariation> doubts(boolean catalogue) {
        return read.assumptions().stream()
                .filter(a -> a.origin() == Origin.GUESSED || (catalogue && a.isGuess()))
                .map(this::doubt)
                .toList();
    }

    private GuessVariation doubt(Assumption guess) {
        return new GuessVariation(
                new Guess(guess.file(), guess.path(), guess.text()),
                factor ->
                        guess.isWord()
                                ? Optional.empty()
                                : reader.study(new Variation(guess.file(), guess.path(), factor))
                                        .study());
    }
}
