package stillturning.report.explored;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import stillturning.model.goal.CriterionName;

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
        double steps = value / step(criterion);
        double whole =
                switch (criterion) {
                    case ENDURANCE -> Math.floor(steps);
                    case WEIGHT, COST -> Math.rint(steps);
                    case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> steps;
                };
        return criterion.moreIsBetter() ? -whole : whole;
    }

    private static double step(CriterionName criterion) {
        return switch (criterion) {
            case ENDURANCE -> SECONDS;
            case WEIGHT -> KILOGRAMS;
            case COST -> PRICE;
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> 1;
        };
    }

    /** The value of a criterion that so many steps stand for. */
    public static double value(CriterionName criterion, double steps) {
        return (criterion.moreIsBetter() ? -steps : steps) * step(criterion);
    }

    /** What no layout can be better than. */
    public List<Double> atLeast() {
        return Collections.nCopies(criteria.size(), Double.NEGATIVE_INFINITY);
    }
}
