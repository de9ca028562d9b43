package stillturning.reliability.chance;

/**
 * A probability, and what it is worth: low ≤ value ≤ high, and always high ≤ minCutUpperBound ≤
 * rareEventSum.
 *
 * @param value exact, or the upper bound where only bounds are known
 * @param low no truth lies below
 * @param high no truth lies above
 * @param minCutUpperBound as if cut sets shared no event: 1 - Π(1 - P)
 * @param rareEventSum as if no two cut sets ever came together: ΣP; may be above 1
 */
public record Estimate(
        Basis basis,
        double value,
        double low,
        double high,
        double minCutUpperBound,
        double rareEventSum) {

    Estimate times(double factor) {
        return new Estimate(
                basis,
                value * factor,
                low * factor,
                high * factor,
                minCutUpperBound * factor,
                rareEventSum * factor);
    }
}
