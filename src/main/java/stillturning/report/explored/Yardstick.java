package stillturning.report.explored;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import stillturning.model.CriterionName;

/**
 * What layouts are compared by, each in steps that a builder would notice; less is better.
 *
 * @param criteria each once
 */
public record Yardstick(List<CriterionName> criteria) {

    private static final double SECONDS = 60;
    private static final double KILOGRAMS = 0.1;
    private static final double PRICE = 10;

    public Yardstick {
        criteria = List.copyOf(criteria);
    }

    /** A layout's values in whole steps. */
    public List<Double> of(Map<CriterionName, Double> values) {
        return criteria.stream().map(c -> inSteps(c, values.getOrDefault(c, Double.NaN))).toList();
    }

    private static double inSteps(CriterionName criterion, double value) {
        double steps =
                switch (criterion) {
                    case ENDURANCE -> Math.floor(value / SECONDS);
                    case WEIGHT -> Math.rint(value / KILOGRAMS);
                    case COST -> Math.rint(value / PRICE);
                    case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> value;
                };
        return criterion.moreIsBetter() ? -steps : steps;
    }

    /** What no layout can be better than. */
    public List<Double> atLeast() {
        return Collections.nCopies(criteria.size(), Double.NEGATIVE_INFINITY);
    }
}
