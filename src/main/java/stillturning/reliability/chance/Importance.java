package stillturning.reliability.chance;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How much the average flight's probability hangs on one event, or on a group of them taken as one.
 *
 * @param events one, or those of the group, ascending
 * @param basis of all figures; where bounded they are those of the min-cut upper bound
 * @param top probability as it is
 * @param always probability with all of them certain
 * @param never probability with none of them possible
 * @param fussellVeselySum ΣP of the cut sets with any of them over ΣP of all
 * @param fussellVeselyUnion probability that a cut set with any of them comes true, over the top;
 *     empty where it is not known exactly
 */
public record Importance(
        List<Integer> events,
        Basis basis,
        double top,
        double always,
        double never,
        double fussellVeselySum,
        OptionalDouble fussellVeselyUnion) {

    public Importance {
        events = List.copyOf(events);
    }

    /** What certainty adds against impossibility: for one event dTop/dq. */
    public double birnbaum() {
        return always - never;
    }

    /** Share of the top that goes when they go: for one event Birnbaum times q over top. */
    public double criticality() {
        return share(top - never, top);
    }

    /** Risk achievement worth: how many times likelier the top becomes with them certain. */
    public double riskAchievement() {
        return ratio(always, top);
    }

    /**
     * Risk reduction worth: how many times likelier the top is than without them; may be endless.
     */
    public double riskReduction() {
        return ratio(top, never);
    }

    static double share(double part, double whole) {
        return whole == 0 ? 0 : part / whole;
    }

    /** A top that stays at 0 is once as likely as before. */
    private static double ratio(double over, double under) {
        if (under == 0) {
            return over == 0 ? 1 : Double.POSITIVE_INFINITY;
        }
        return over / under;
    }
}
