package stillturning.report.json;

import static stillturning.report.json.JsonTypes.TEXT;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.Guesses.GuessedWord;
import stillturning.assess.Guesses.Untried;
import stillturning.assess.Guesses.Weighty;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Turn;
import stillturning.assess.findout.Worth;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.ranking.Acceptability.Accepted;

/** What trying the guesses brought. */
final class GuessesJson {

    private static final JsonShape<Guess> GUESS =
            JsonShape.<Guess>named("guess")
                    .text("file", Guess::source)
                    .text("path", Guess::name)
                    .text("value", Guess::value)
                    .text("finding", Guess::finding)
                    .says("How to find it out; empty where nobody has said.");

    /** A turn with the range that it lies in. */
    private record Placed(Turn turn, OpenInterval reach) {}

    private static final JsonShape<Placed> TURN =
            JsonShape.<Placed>named("turn")
                    .flag("first", p -> p.turn.first())
                    .says("Whether it turns who is first; otherwise only a verdict.")
                    .flag("below", p -> p.turn.below())
                    .says("Whether the answer is another below it; otherwise above it.")
                    .text("value", p -> p.reach.wordsAt(p.turn.place()))
                    .text("asGuessedAt", p -> p.reach.wordsAt(p.turn.before()))
                    .says("Nearest value that was tried and leaves the answer as it is.")
                    .text("anotherAt", p -> p.reach.wordsAt(p.turn.after()))
                    .says("Nearest value that was tried and turns it.");

    private static final JsonShape<Worth> WORTH =
            JsonShape.<Worth>named("worthOfKnowing")
                    .number("anotherFirst", Worth::first)
                    .says("Share of the range in which another candidate is first.")
                    .number("anotherAnswer", Worth::any)
                    .says("Share of the range in which that or a verdict is another.")
                    .number("shareError", Worth::shareError)
                    .says("Greatest error of these shares.")
                    .number("points", Worth::points)
                    .says(
                            "Mean of the points that are gained by knowing it before choosing; a"
                                    + " missed requirement counts as one point.")
                    .number("pointsError", Worth::pointsError);

    private static final JsonShape<Accepted> ACCEPTED =
            JsonShape.<Accepted>named("acceptedCandidate")
                    .text("candidate", Accepted::name)
                    .number("first", Accepted::first)
                    .says("Share of draws and weightings in which it is first.")
                    .number("firstError", Accepted::firstError)
                    .says("Half width of the 95 % interval.")
                    .list("centralWeights", JsonTypes.NUMBER, Accepted::centralWeights)
                    .says("Mean of the weightings that put it first, in the criteria's order.")
                    .number("confidence", Accepted::confidence)
                    .says("Share of draws in which it is first with its central weights.")
                    .number("confidenceError", Accepted::confidenceError)
                    .says("Half width of the 95 % interval.")
                    .number("asWeighed", Accepted::asWeighed)
                    .says("Share of draws in which it is first with the study's weights.")
                    .number("asWeighedError", Accepted::asWeighedError)
                    .says("Half width of the 95 % interval.");

    private static final JsonShape<Acceptability> SPREAD =
            JsonShape.<Acceptability>named("spread")
                    .whole("samples", Acceptability::samples)
                    .says("How often all guesses were drawn.")
                    .whole("leftOut", Acceptability::leftOut)
                    .says("Draws beside these in which a candidate could not be computed.")
                    .list("candidates", ACCEPTED, Acceptability::candidates);

    private static final JsonType<String> KIND =
            TEXT.with(
                    "enum",
                    Arrays.stream(GuessChange.class.getPermittedSubclasses())
                            .map(GuessesJson::word)
                            .sorted()
                            .toList());

    private static final JsonShape<GuessChange> CHANGE =
            JsonShape.<GuessChange>named("change")
                    .field("what", KIND, c -> word(c.getClass()))
                    .text("candidate", GuessChange::candidate)
                    .says("The new leader, or the candidate that it is about.")
                    .maybe(
                            "requirement",
                            JsonTypes.TEXT,
                            of(GuessChange.Requirement.class, GuessChange.Requirement::requirement))
                    .says("The hard requirement whose verdict changes.")
                    .maybe(
                            "met",
                            JsonTypes.FLAG,
                            of(GuessChange.Requirement.class, GuessChange.Requirement::met))
                    .says("Whether it is then met.")
                    .maybe(
                            "fromSeconds",
                            JsonTypes.NUMBER,
                            of(GuessChange.Endurance.class, GuessChange.Endurance::fromSeconds))
                    .says("Endurance without charging as guessed; null where nothing limits it.")
                    .maybe(
                            "toSeconds",
                            JsonTypes.NUMBER,
                            of(GuessChange.Endurance.class, GuessChange.Endurance::toSeconds))
                    .says("Endurance without charging then; null where nothing limits it.")
                    .maybe(
                            "reason",
                            JsonTypes.TEXT,
                            of(GuessChange.Uncomputed.class, GuessChange.Uncomputed::reason))
                    .says("Why it can no longer be computed.");

    private static final JsonShape<Weighty> WEIGHTY =
            JsonShape.<Weighty>named("guessThatMatters")
                    .field("guess", GUESS, Weighty::guess)
                    .list("ifLower", CHANGE, Weighty::ifLess)
                    .list("ifHigher", CHANGE, Weighty::ifMore)
                    .text("low", w -> w.reach().wordsAt(0))
                    .says("Low end of its range.")
                    .text("high", w -> w.reach().wordsAt(1))
                    .field("worth", WORTH, Weighty::worth)
                    .list(
                            "turns",
                            TURN,
                            w ->
                                    w.worth().turns().stream()
                                            .map(turn -> new Placed(turn, w.reach()))
                                            .toList())
                    .says("Where answers turn, nearest to the guess first.");

    private static final JsonShape<Untried> UNTRIED =
            JsonShape.<Untried>named("untriedGuess")
                    .field("guess", GUESS, Untried::guess)
                    .maybe("value", TEXT, Untried::value)
                    .says("The end of its range that cannot be; null where no other value can.");

    private static final JsonShape<GuessedWord> CHOICE =
            JsonShape.<GuessedWord>named("guessedWord")
                    .field("guess", GUESS, GuessedWord::guess)
                    .text("other", GuessedWord::other)
                    .says("What was tried in its place.")
                    .list("changes", CHANGE, GuessedWord::changes);

    static final JsonShape<Guesses> GUESSES =
            JsonShape.<Guesses>named("guesses")
                    .list("matter", WEIGHTY, Guesses::matter)
                    .says("Guesses that change something, most likely to turn an answer first.")
                    .list("indifferent", GUESS, Guesses::indifferent)
                    .says("Guesses that change nothing that is watched.")
                    .list("untried", UNTRIED, Guesses::untried)
                    .says(
                            "Guesses that were not tried one way, because the study would not be"
                                    + " valid.")
                    .list("choices", CHOICE, Guesses::choices)
                    .says("Guesses among words, each with one of the others in its place.")
                    .texts("leftOut", Guesses::leftOut)
                    .says("Candidates not looked at, as they miss too much to come first.")
                    .maybe("spread", SPREAD, Guesses::spread)
                    .says(
                            "What becomes of first place with all guesses anywhere in their ranges;"
                                    + " null unless it was asked.");

    private GuessesJson() {}

    private static String word(Class<?> kind) {
        return kind.getSimpleName().toLowerCase(Locale.ROOT);
    }

    /** What belongs to one kind of change alone. */
    private static <C extends GuessChange, V> Function<GuessChange, Optional<V>> of(
            Class<C> kind, Function<C, V> get) {
        return change -> Optional.of(change).filter(kind::isInstance).map(kind::cast).map(get);
    }
}
