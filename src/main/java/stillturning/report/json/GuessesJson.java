package stillturning.report.json;

import static stillturning.report.json.JsonTypes.EXACT;
import static stillturning.report.json.JsonTypes.TEXT;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.Change;
import stillturning.assess.Guesses.Choice;
import stillturning.assess.Guesses.Untried;
import stillturning.assess.Guesses.Weighty;

/** What trying the guesses brought. */
final class GuessesJson {

    private static final JsonShape<Guess> GUESS =
            JsonShape.<Guess>named("guess")
                    .text("file", Guess::source)
                    .text("path", Guess::name)
                    .text("value", Guess::value);

    private static final JsonType<String> KIND =
            TEXT.with(
                    "enum",
                    Arrays.stream(Change.class.getPermittedSubclasses())
                            .map(GuessesJson::word)
                            .sorted()
                            .toList());

    private static final JsonShape<Change> CHANGE =
            JsonShape.<Change>named("change")
                    .field("what", KIND, c -> word(c.getClass()))
                    .text("candidate", Change::candidate)
                    .says("The new leader, or the candidate that it is about.")
                    .maybe(
                            "requirement",
                            JsonTypes.TEXT,
                            of(Change.Requirement.class, Change.Requirement::requirement))
                    .says("The hard requirement whose verdict changes.")
                    .maybe(
                            "met",
                            JsonTypes.FLAG,
                            of(Change.Requirement.class, Change.Requirement::met))
                    .says("Whether it is then met.")
                    .maybe(
                            "fromSeconds",
                            JsonTypes.NUMBER,
                            of(Change.Endurance.class, Change.Endurance::fromSeconds))
                    .says("Endurance without charging as guessed; null where nothing limits it.")
                    .maybe(
                            "toSeconds",
                            JsonTypes.NUMBER,
                            of(Change.Endurance.class, Change.Endurance::toSeconds))
                    .says("Endurance without charging then; null where nothing limits it.")
                    .maybe(
                            "reason",
                            JsonTypes.TEXT,
                            of(Change.Uncomputed.class, Change.Uncomputed::reason))
                    .says("Why it can no longer be computed.");

    private static final JsonShape<Weighty> WEIGHTY =
            JsonShape.<Weighty>named("guessThatMatters")
                    .field("guess", GUESS, Weighty::guess)
                    .list("ifLower", CHANGE, Weighty::ifLess)
                    .list("ifHigher", CHANGE, Weighty::ifMore);

    private static final JsonShape<Untried> UNTRIED =
            JsonShape.<Untried>named("untriedGuess")
                    .field("guess", GUESS, Untried::guess)
                    .field("factor", EXACT, Untried::factor);

    private static final JsonShape<Choice> CHOICE =
            JsonShape.<Choice>named("guessedWord")
                    .field("guess", GUESS, Choice::guess)
                    .text("other", Choice::other)
                    .says("What was tried in its place.")
                    .list("changes", CHANGE, Choice::changes);

    static final JsonShape<Guesses> GUESSES =
            JsonShape.<Guesses>named("guesses")
                    .field("share", EXACT.with("exclusiveMinimum", 0), Guesses::share)
                    .says("How far each guess was changed, as a fraction of its value.")
                    .list("matter", WEIGHTY, Guesses::matter)
                    .says("Guesses that change something, gravest first.")
                    .list("indifferent", GUESS, Guesses::indifferent)
                    .says("Guesses that change nothing that is watched.")
                    .list("untried", UNTRIED, Guesses::untried)
                    .says(
                            "Guesses that were not tried one way, because the study would not be"
                                    + " valid.")
                    .list("choices", CHOICE, Guesses::choices)
                    .says("Guesses among words, each with one of the others in its place.");

    private GuessesJson() {}

    private static String word(Class<?> kind) {
        return kind.getSimpleName().toLowerCase(Locale.ROOT);
    }

    /** What belongs to one kind of change alone. */
    private static <C extends Change, V> Function<Change, Optional<V>> of(
            Class<C> kind, Function<C, V> get) {
        return change -> Optional.of(change).filter(kind::isInstance).map(kind::cast).map(get);
    }
}
