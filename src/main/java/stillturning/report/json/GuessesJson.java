package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;

/** The shape of what trying the guesses brought in JSON. */
record GuessesJson(
        double share, List<Weighty> matter, List<GuessAt> indifferent, List<Untried> untried) {

    /** A guessed value. */
    record GuessAt(String file, String path, String value) {}

    /** A guess that matters. */
    record Weighty(GuessAt guess, List<Change> ifLower, List<Change> ifHigher) {}

    /** A guess that was not changed to this multiple. */
    record Untried(GuessAt guess, double factor) {}

    /** What changes; null for what does not belong to such a change. */
    record Change(
            String what,
            String candidate,
            @Nullable String requirement,
            @Nullable Boolean met,
            @Nullable Double fromSeconds,
            @Nullable Double toSeconds,
            @Nullable String reason) {}

    static GuessesJson of(Guesses guesses) {
        return new GuessesJson(
                guesses.share(),
                guesses.matter().stream().map(GuessesJson::weighty).toList(),
                guesses.indifferent().stream().map(GuessesJson::guess).toList(),
                guesses.untried().stream()
                        .map(u -> new Untried(guess(u.guess()), u.factor()))
                        .toList());
    }

    private static Weighty weighty(Guesses.Weighty w) {
        return new Weighty(
                guess(w.guess()),
                w.ifLess().stream().map(GuessesJson::change).toList(),
                w.ifMore().stream().map(GuessesJson::change).toList());
    }

    private static GuessAt guess(Guess guess) {
        return new GuessAt(guess.source(), guess.name(), guess.value());
    }

    private static Change change(Guesses.Change change) {
        if (change instanceof Guesses.Change.Requirement r) {
            return new Change(
                    "requirement", r.candidate(), r.requirement(), r.met(), null, null, null);
        } else if (change instanceof Guesses.Change.Endurance e) {
            return new Change(
                    "endurance",
                    e.candidate(),
                    null,
                    null,
                    JsonNumbers.number(e.fromSeconds()),
                    JsonNumbers.number(e.toSeconds()),
                    null);
        } else if (change instanceof Guesses.Change.Uncomputed u) {
            return new Change("uncomputed", u.candidate(), null, null, null, null, u.reason());
        }
        if (change instanceof Guesses.Change.Unwell unwell) {
            return new Change("unwell", unwell.candidate(), null, null, null, null, null);
        }
        Guesses.Change.Leader leader = (Guesses.Change.Leader) change;
        return new Change("leader", leader.candidate(), null, null, null, null, null);
    }
}
