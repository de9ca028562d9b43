package stillturning.model.failure;

import java.util.Optional;
import stillturning.model.Chances.Rate;

/**
 * One event that fails several parts together.
 *
 * @param name unique in the candidate: {@code "heat in engine"}
 * @param words what happens, in a sentence without its end
 * @param rate how often; empty where nobody knows
 */
public record Cause(
        CauseKind kind, String name, Failure failure, String words, Optional<Rate> rate) {

    /** What the parts have in common. */
    public enum CauseKind {
        /** They sit in one zone, or their wires pass it. */
        ZONE,
        /** Wires go through one hole. */
        HOLE,
        /** Wires are tied into one bundle. */
        BUNDLE,
        /** They hang on one bracket or behind one cover. */
        MOUNT,
        /** They run the same program. */
        FIRMWARE,
        /** They are of one make. */
        ALIKE
    }

    /** The same with more words. */
    Cause adding(String more) {
        return new Cause(kind, name, failure, words + more, rate);
    }
}
