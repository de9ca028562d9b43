package stillturning.dossier;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import stillturning.assess.Guess;
import stillturning.assess.GuessVariation;
import stillturning.files.PartCatalogue;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Assumption;
import stillturning.files.value.Variation;
import stillturning.model.Study;
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

    private Map<String, Supplier<Optional<Study>>> otherClasses(String kind, String supposed) {
        Map<String, Supplier<Optional<Study>>> others = new LinkedHashMap<>();
        PartCatalogue.shipped().kind(kind).stream()
                .flatMap(k -> k.classes().stream())
                .map(PartCatalogue.PartClass::name)
                .filter(name -> !name.equals(supposed))
                .forEach(
                        name ->
                                others.put(
                                        name,
                                        () -> reader.study(Variation.ofClass(kind, name)).study()));
        return others;
    }

    private GuessVariation doubt(Assumption guess) {
        Guess of = new Guess(guess.file(), guess.path(), guess.text());
        Optional<String> kind = guess.supposedKind();
        if (kind.isPresent()) {
            return new GuessVariation(of, otherClasses(kind.get(), guess.text()));
        }
        return new GuessVariation(
                of,
                factor ->
                        guess.isWord()
                                ? Optional.empty()
                                : reader.study(new Variation(guess.file(), guess.path(), factor))
                                        .study());
    }
}
