package stillturning.assess.front;

import java.util.List;

/** What came of trying a thing. */
public sealed interface Trial {

    /** What decided: asked first of all that is made from the thing. */
    List<String> evidence();

    /**
     * It is as asked for.
     *
     * @param values less is better, as many for each thing
     */
    record Met(List<Double> values, List<String> evidence) implements Trial {
        public Met {
            values = List.copyOf(values);
            evidence = List.copyOf(evidence);
        }
    }

    /**
     * It is not as asked for.
     *
     * @param by what it misses
     * @param shortfall how far it is from being as asked for, as far as that was looked at
     */
    record Missed(String by, double shortfall, List<String> evidence) implements Trial {
        public Missed {
            evidence = List.copyOf(evidence);
        }
    }

    /** It was not tried, because it cannot be on the front. */
    record Outdone(List<String> evidence) implements Trial {
        public Outdone {
            evidence = List.copyOf(evidence);
        }
    }
}
