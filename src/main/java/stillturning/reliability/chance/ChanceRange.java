package stillturning.reliability.chance;

/**
 * Where a probability lies when every rate may be anywhere in its spread.
 *
 * @param low5 5th percentile of the samples
 * @param high95 95th percentile
 * @param mean of the samples
 */
public record ChanceRange(
        double low5, double median, double high95, double mean, int samples, long seed) {

    ChanceRange times(double factor) {
        return new ChanceRange(
                low5 * factor, median * factor, high95 * factor, mean * factor, samples, seed);
    }
}
