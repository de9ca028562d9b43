package stillturning.assess.front;

import java.util.List;
import java.util.Optional;

/** What came of trying a thing. */
public sealed interface TrialResult {

    /** What decided: asked first of all that is made from the thing. */
    List<String> evidence();

    /** Whether anything was tried at all. */
    default boolean tried() {
        return true;
    }

    /** What it is worth, less being better; empty unless it is as asked for. */
    default Optional<List<Double>> worth() {
        return Optional.empty();
    }

    /** What it misses; empty unless that was found out. */
    default Optional<String> misses() {
        return Optional.empty();
    }

    /** How far it is from being as asked for; infinite unless that was found out. */
    default double shortfall() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * It is as asked for.
     *
     * @param values less is better, as many for each thing
     */
    record Met(List<Double> values, List<String> evidence) implements TrialResult {
        public Met {
            values = List.copyOf(values);
            evidence = List.copyOf(evidence);
        }

        @Override
        public Optional<List<Double>> worth() {
            return Optional.of(values);
        }
    }

    /**
     * It is not as asked for.
     *
     * @param by what it misses
     * @param shortfall how far it is from being as asked for, as far as that was looked at
     */
    record Missed(String by, double shortfall, List<String> evidence) implements TrialResult {
        public Missed {
            evidence = List.copyOf(evidence);
        }

        @Override
        public Optional<String> misses() {
            return Optional.of(by);
        }
    }

    /** It was not tried, because it cannot be on the front. */
    record Outdone(List<String> evidence) implements TrialResult {
        public Outdone {
            evidence = List.copyOf(evidence);
        }

        @Override
        public boolean tried() {
            return false;
        }
    }
}
