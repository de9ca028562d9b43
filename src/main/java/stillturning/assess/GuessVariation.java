package stillturning.assess;

import java.util.Optional;
import java.util.function.DoubleFunction;
import stillturning.model.Study;

/**
 * A guess, and the study as it would be if it were wrong.
 *
 * @param times the study with the guess multiplied by a factor; empty if the value cannot be that.
 *     Asked from any thread
 */
public record GuessVariation(Guess guess, DoubleFunction<Optional<Study>> times) {}
