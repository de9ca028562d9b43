package stillturning.assess;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import stillturning.assess.findout.GroupScreen;
import stillturning.assess.findout.OpenInterval;
import stillturning.model.Study;

/**
 * A guess, and the study as it would be if it were wrong.
 *
 * @param reach between which limits it is; absent for words and for what no study can change
 * @param times the study with another value; asked from any thread
 * @param others of a guess among words, the study with each of the others; asked from any thread
 */
public record GuessVariation(
        Guess guess,
        Optional<OpenInterval> reach,
        ChangedGuess times,
        Map<String, Supplier<Optional<Study>>> others) {

    /** How far a guess without a stated range may be off (fraction of its value). */
    public static final double SHARE = 0.2;

    /** The study with another value of one guess. */
    @FunctionalInterface
    public interface ChangedGuess {

        /**
         * The study; empty if the value cannot be that.
         *
         * @param candidates that anybody will look at; others may be missing from the study
         */
        Optional<Study> at(double value, Set<String> candidates);
    }

    /** The study with many guesses elsewhere. */
    @FunctionalInterface
    public interface ChangedGuesses {

        /**
         * The study; empty if no study can have that.
         *
         * @param places of each guess with a reach, 0 for its low end to 1 for its high end
         * @param candidates that anybody will look at; others may be missing from the study
         */
        Optional<Study> at(List<Double> places, Set<String> candidates);
    }

    /**
     * All guesses of a study.
     *
     * @param together many of them elsewhere at once; absent where each is tried with every failure
     * @param draws how often all of them are drawn at once, which needs {@code together}
     */
    public record Doubts(List<GuessVariation> all, Optional<ChangedGuesses> together, int draws) {
        public Doubts {
            all = List.copyOf(all);
        }

        /** None of them drawn at once. */
        public Doubts(List<GuessVariation> all, Optional<ChangedGuesses> together) {
            this(all, together, 0);
        }

        /** The same, all of them drawn at once so often. */
        public Doubts drawn(int times) {
            return new Doubts(all, together, times);
        }

        /** Those in figures, in their order. */
        public List<GuessVariation> inFigures() {
            return all.stream().filter(d -> d.reach().isPresent()).toList();
        }

        /** How many trials there are at least. */
        public int trials() {
            int each = all.stream().mapToInt(GuessVariation::trials).sum();
            return each + (together.isPresent() ? GroupScreen.TRIALS + draws : 0);
        }
    }

    public GuessVariation {
        others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
    }

    /** A guess in figures, a fifth lower to a fifth higher, as factors of its value. */
    public GuessVariation(Guess guess, DoubleFunction<Optional<Study>> times) {
        this(
                guess,
                Optional.of(new OpenInterval(1 - SHARE, 1, 1 + SHARE, factor -> factor + " times")),
                (factor, candidates) -> times.apply(factor),
                Map.of());
    }

    /** A guess among words. */
    public GuessVariation(Guess guess, Map<String, Supplier<Optional<Study>>> others) {
        this(guess, Optional.empty(), (value, candidates) -> Optional.empty(), others);
    }

    /** How often it is tried at least. */
    public int trials() {
        return reach.isPresent() ? 2 : others.size();
    }
}
