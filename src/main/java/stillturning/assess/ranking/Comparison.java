package stillturning.assess.ranking;

import java.util.List;

/**
 * Two candidates side by side: the material for "why first" and "why not".
 *
 * @param pointsAhead the candidate's total minus the other's
 * @param better criteria in which the candidate is better, largest difference of contributions
 *     first
 * @param worse criteria in which it is worse, largest difference first
 * @param gatesMissed hard requirements that only the candidate misses
 * @param gatesReferenceMissed hard requirements that only the other misses
 * @param dominance whether one of the two dominates the other
 */
public record Comparison(
        String candidate,
        String reference,
        double pointsAhead,
        List<CriterionDifference> better,
        List<CriterionDifference> worse,
        List<GateVerdict> gatesMissed,
        List<GateVerdict> gatesReferenceMissed,
        Dominance dominance) {

    /** How the candidate stands to the one it is laid beside. */
    public enum Dominance {
        DOMINATES,
        DOMINATED,
        NEITHER
    }
}
