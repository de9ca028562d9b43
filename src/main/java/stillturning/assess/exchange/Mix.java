package stillturning.assess.exchange;

import java.util.Map;
import java.util.Set;
import stillturning.model.goal.CriterionName;

/**
 * The first of two candidates with some groups from the second, assessed.
 *
 * @param exchanged groups that it has from the second
 * @param values value by criterion
 * @param points on the scales of the whole study, from 0 to 1
 * @param missed hard requirements missed, of those that mixes are held against
 */
public record Mix(
        Set<Group> exchanged, Map<CriterionName, Double> values, double points, int missed) {

    /** Totals that differ by less than this are the same sum, rounded in another order. */
    private static final double SAME = 1e-9;

    public Mix {
        exchanged = Set.copyOf(exchanged);
        values = Map.copyOf(values);
    }

    /** Above 0 if this one would be ranked before another, 0 if level with it. */
    public int against(Mix other) {
        if (missed != other.missed) {
            return Integer.compare(other.missed, missed);
        }
        return Math.abs(points - other.points) < SAME ? 0 : Double.compare(points, other.points);
    }
}
