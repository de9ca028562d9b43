package stillturning.sizing.result;

import java.util.Optional;
import java.util.function.Function;

/**
 * Something about sizes that is not as it should be.
 *
 * @param part what it is about: a part, a load, or a contact or channel of one
 * @param other what else has to do with it: the protector of a wire, the wire of a protector, the
 *     circuit; empty if nothing
 * @param found the first number of the rule
 * @param allowed the second number of the rule
 * @param when phase and failure in which it shows
 * @param mend what would mend it, if a size does
 */
public record SizeFinding(
        Rule rule,
        String part,
        String other,
        double found,
        double allowed,
        Carried when,
        Optional<Mend> mend) {

    /** Another size that mends. */
    public sealed interface Mend {
        /** The part that needs it. */
        String part();

        /** The answer for its kind. */
        <T> T fold(Function<Gauge, T> gauge, Function<Rating, T> rating);

        /** A thicker wire, by its name in the table. */
        record Gauge(String part, String awg) implements Mend {
            @Override
            public <T> T fold(Function<Gauge, T> gauge, Function<Rating, T> rating) {
                return gauge.apply(this);
            }
        }

        /** A protector of another rating (A). */
        record Rating(String part, double amps) implements Mend {
            @Override
            public <T> T fold(Function<Gauge, T> gauge, Function<Rating, T> rating) {
                return rating.apply(this);
            }
        }
    }
}
