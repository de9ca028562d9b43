package stillturning.reliability.combined;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** Part that must be called on before this makes a difference; empty if it always does. */
    default String sleepsIn() {
        return "";
    }

    /** Part of which it changes something; empty if it changes none. */
    default String part() {
        return "";
    }

    /** Adds what it does to a failure. */
    void addTo(Changes all);

    /** What conditions come to together. */
    record Changes(List<Hit> hits, Map<String, String> levers, Set<String> dark) {}

    /** One element of a part changed. */
    record Changed(String part, Alteration alteration, String sleepsIn) implements Condition {
        @Override
        public void addTo(Changes all) {
            all.hits().add(new Hit(part, FailureMode.of("changed", alteration)));
        }
    }

    /** A lever that stands elsewhere. */
    record LeverElsewhere(String lever, String position) implements Condition {
        @Override
        public void addTo(Changes all) {
            all.levers().put(lever, position);
        }
    }

    /** A lamp that is dead, which is the same as a live one until its cue comes. */
    record Dark(String cue) implements Condition {
        @Override
        public String sleepsIn() {
            return cue;
        }

        @Override
        public void addTo(Changes all) {
            all.dark().add(cue);
        }
    }

    /** The pilot does nothing, which is no failure of the candidate. */
    record Idle() implements Condition {
        @Override
        public void addTo(Changes all) {}
    }

    /** The failure that makes these changes, each as a hit of its own. */
    static Failure failure(List<Condition> conditions) {
        Changes all = new Changes(new ArrayList<>(), new LinkedHashMap<>(), new LinkedHashSet<>());
        conditions.forEach(condition -> condition.addTo(all));
        return new Failure("together", all.hits(), all.levers(), Set.of(), all.dark());
    }
}
