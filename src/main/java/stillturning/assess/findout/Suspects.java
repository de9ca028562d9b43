package stillturning.assess.findout;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * Steps, each of a candidate and with a name of its own, that are told again by the end of a guess.
 *
 * @param low whether a candidate's step is, with the guess at its lower end
 * @param high the same at its upper end
 */
public record Suspects(BiPredicate<String, String> low, BiPredicate<String, String> high) {

    /**
     * Those that a screen leaves.
     *
     * @param number of the guess, from 0
     * @param turned steps that turned, by trial; all are told again where no trial was made
     */
    public static Suspects of(
            int number, GroupScreen screen, Optional<Map<Integer, Set<String>>> turned) {
        return new Suspects(
                among(turned.map(t -> screen.suspected(number, false, t))),
                among(turned.map(t -> screen.suspected(number, true, t))));
    }

    private static BiPredicate<String, String> among(Optional<Set<String>> steps) {
        return (candidate, name) -> steps.isEmpty() || steps.get().contains(step(candidate, name));
    }

    /** One name for a candidate's step. */
    public static String step(String candidate, String name) {
        return candidate + ": " + name;
    }

    /** Steps that are told again at one of the ends. */
    public BiPredicate<String, String> either() {
        return low.or(high);
    }
}
