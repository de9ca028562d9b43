package stillturning.assess.ranking;

/**
 * A change of one weight at which the leader is drawn level; beyond it another leads. The other
 * weights keep their proportions (even ones where they are all 0) and all weights sum to 1.
 *
 * @param from the weight now (1)
 * @param to the weight at which the two are level (1): the present one where first place is shared
 * @param direction which way the weight goes
 * @param newLeader who leads beyond it
 */
public record WeightChange(
        String criterion, double from, double to, Direction direction, String newLeader) {

    /** Which way a weight goes. */
    public enum Direction {
        RISES,
        FALLS
    }

    /** Size of the change (1). */
    public double size() {
        return Math.abs(to - from);
    }
}
