package stillturning.reliability.combined;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate.Hit;
import stillturning.model.failure.Failure;
import stillturning.parts.Alteration;
import stillturning.parts.FailureMode;

/**
 * One change to a candidate, the smallest piece of an event.
 *
 * <p>Two events that change the same are the same to the time line, whatever they are called.
 */
sealed interface Condition {

    /** Part that must be called upon before this makes a difference; empty if it always does. */
    default String sleepsIn() {
        return "";
    }

    /** One element of a part changed. */
    record Changed(String part, Alteration alteration, String sleepsIn) implements Condition {}

    /** A lever that stands elsewhere. */
    record Lever(String lever, String position) implements Condition {}

    /** The pilot does nothing. */
    record Idle() implements Condition {}

    /** The failure that makes these changes, each as a hit of its own. */
    static Failure failure(List<Condition> conditions) {
        List<Hit> hits = new ArrayList<>();
        Map<String, String> levers = new LinkedHashMap<>();
        for (Condition condition : conditions) {
            if (condition instanceof Changed changed) {
                hits.add(
                        new Hit(
                                changed.part,
                                FailureMode.of("changed", changed.alteration)));
            } else if (condition instanceof Lever lever) {
                levers.put(lever.lever, lever.position);
            }
        }
        return new Failure("together", hits, levers);
    }
}
