package stillturning.assess.ranking;

import java.util.List;

/**
 * One candidate's place, and what it is made of.
 *
 * @param rank 1 for the best; candidates whose order nothing decides share a rank
 * @param total sum of the contributions, from 0 to 1
 * @param contributions in the criteria's order
 * @param dominatedBy candidates that are at least as good in every criterion and gate and better in
 *     one, by name
 * @param dominates the reverse of {@code dominatedBy}
 */
public record Standing(
        String name,
        int rank,
        double total,
        List<Contribution> contributions,
        List<GateVerdict> missedGates,
        List<String> dominatedBy,
        List<String> dominates) {

    /** Whether no other candidate dominates this one. */
    public boolean efficient() {
        return dominatedBy.isEmpty();
    }
}
