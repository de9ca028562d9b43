package stillturning.assess.ranking;

/**
 * The scale that a criterion was in fact valued on.
 *
 * @param weight share of this criterion in the sum of all weights (1)
 * @param worst value that is worth nothing
 * @param best value that is worth the whole weight
 * @param origin whether the ends were given or are those of the candidates
 */
public record AppliedScale(
        String criterion, Sense sense, double weight, double worst, double best, Origin origin) {

    /** Where the ends came from. */
    public enum Origin {
        GIVEN,
        RANGE_OF_CANDIDATES
    }

    /**
     * Worth of a value between 0 (worst end or beyond) and 1 (best end or beyond). Where the
     * candidates have one and the same finite value it is worth 1, but 0 beside an infinitely good
     * one.
     */
    double worthOf(double value, boolean someAreUnlimited) {
        if (Double.isInfinite(value)) {
            return sense == Sense.MORE_IS_BETTER ? 1 : 0;
        }
        if (worst == best) {
            return someAreUnlimited && sense == Sense.MORE_IS_BETTER ? 0 : 1;
        }
        return Math.max(0, Math.min(1, (value - worst) / (best - worst)));
    }
}
