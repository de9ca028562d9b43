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

    /** Adds what it does to a failure. */
    void addTo(List<Hit> hits, Map<String, String> levers);

    /** One element of a part changed. */
    record Changed(String part, Alteration alteration, String sleepsIn) implements Condition {
        @Override
        public void addTo(List<Hit> hits, Map<String, String> levers) {
            hits.add(new Hit(part, FailureMode.of("changed", alteration)));
        }
    }

    /** A lever that stands elsewhere. */
    record Lever(String lever, String position) implements Condition {
        @Override
        public void addTo(List<Hit> hits, Map<String, String> levers) {
            levers.put(lever, position);
        }
    }

    /** The pilot does nothing, which is no failure of the candidate. */
    record Idle() implements Condition {
        @Override
        public void addTo(List<Hit> hits, Map<String, String> levers) {}
    }

    /** The failure that makes these changes, each as a hit of its own. */
    static Failure failure(List<Condition> conditions) {
        List<Hit> hits = new ArrayList<>();
        Map<String, String> levers = new LinkedHashMap<>();
        conditions.forEach(condition -> condition.addTo(hits, levers));
        return new Failure("together", hits, levers);
    }
}
