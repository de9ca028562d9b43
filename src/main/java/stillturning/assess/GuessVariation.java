package stillturning.assess;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import stillturning.model.Study;

/**
 * A guess, and the study as it would be if it were wrong.
 *
 * @param times the study with the guess multiplied by a factor; empty if the value cannot be that.
 *     Asked from any thread
 * @param others of a guess among words, the study with each of the others; asked from any thread
 */
public record GuessVariation(
        Guess guess,
        DoubleFunction<Optional<Study>> times,
        Map<String, Supplier<Optional<Study>>> others) {

    public GuessVariation {
        others = Collections.unmodifiableMap(new LinkedHashMap<>(others));
    }

    /** A guess in figures. */
    public GuessVariation(Guess guess, DoubleFunction<Optional<Study>> times) {
        this(guess, times, Map.of());
    }

    /** A guess among words. */
    public GuessVariation(Guess guess, Map<String, Supplier<Optional<Study>>> others) {
        this(guess, factor -> Optional.empty(), others);
    }

    /** How often it is tried. */
    public int trials() {
        return others.isEmpty() ? 2 : others.size();
    }
}
