package stillturning.dossier;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import stillturning.assess.Guess;
import stillturning.assess.GuessVariation;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.findout.OpenInterval;
import stillturning.files.PartCatalogue;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Assumption;
import stillturning.files.value.Range;
import stillturning.files.value.Variation;
import stillturning.files.value.Variation.ValueChange;
import stillturning.files.value.Variation.ValuePlace;
import stillturning.model.Study;
import stillturning.quantity.Quantity;
import stillturning.yaml.notation.Origin;

/** Which guesses of a study can be tried with another value. */
public final class Guessing {

    private final StudyReader reader;
    private final ReadStudy read;
    private final Measuring measuring;

    /**
     * @param reader makes the study again with another value
     * @param read what it makes of the study as it is
     */
    public Guessing(StudyReader reader, ReadStudy read) {
        this.reader = reader;
        this.read = read;
        this.measuring = new Measuring(read);
    }

    /**
     * The guesses, in the order of the files.
     *
     * @param catalogue with those of the program's catalogue
     */
    public Doubts doubts(boolean catalogue) {
        List<Assumption> guesses =
                read.assumptions().stream()
                        .filter(a -> a.origin() == Origin.GUESSED || (catalogue && a.isGuess()))
                        .toList();
        Map<ValuePlace, Range> ranges = new HashMap<>();
        read.ranges().forEach(range -> ranges.put(range.place(), range));
        List<Range> tried =
                guesses.stream()
                        .filter(a -> a.supposedKind().isEmpty())
                        .flatMap(a -> Optional.ofNullable(ranges.get(a.place())).stream())
                        .toList();
        return new Doubts(
                guesses.stream()
                        .map(a -> doubt(a, Optional.ofNullable(ranges.get(a.place()))))
                        .toList(),
                Optional.of(
                        (places, candidates) ->
                                reader.drawn(
                                                candidates,
                                                tried,
                                                places.stream().mapToDouble(p -> p).toArray())
                                        .study()));
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

    private GuessVariation doubt(Assumption guess, Optional<Range> range) {
        Guess of = new Guess(guess.file(), guess.path(), guess.text(), measuring.of(guess));
        Optional<String> kind = guess.supposedKind();
        if (kind.isPresent()) {
            return new GuessVariation(of, otherClasses(kind.get(), guess.text()));
        }
        return new GuessVariation(
                of,
                range.map(Guessing::reach),
                (value, candidates) ->
                        range.flatMap(r -> changed(guess, value - r.likely(), candidates)),
                Map.of());
    }

    private static OpenInterval reach(Range range) {
        return new OpenInterval(
                range.low(),
                range.likely(),
                range.high(),
                value -> Quantity.shown(value, range.dimension(), range.text()));
    }

    /** A value in a candidate's own file reaches no other candidate. */
    private Optional<Study> changed(Assumption guess, double more, Set<String> candidates) {
        Set<String> reached = new HashSet<>(candidates);
        String owner = guess.file().replaceFirst("\\.yaml$", "");
        if (read.expanded().containsKey(owner)) {
            reached.retainAll(Set.of(owner));
        }
        return reader.only(
                        reached,
                        new Variation(Map.of(guess.place(), new ValueChange(1, more)), Map.of()))
                .study();
    }
}
