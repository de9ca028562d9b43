package stillturning.reliability.chance;

/**
 * A rate or a probability that is not known well: its logarithm is spread normally.
 *
 * @param median half of all cases are lower; in whatever unit its user says
 * @param errorFactor 95th percentile over median, which is median over 5th; 1 for no spread
 * @see "lognormal summary as in NUREG/CR-6823 (read in a second source)"
 */
public record Lognormal(double median, double errorFactor) {

    /** 95th percentile of the standard normal distribution. */
    private static final double Z95 = 1.6448536269514722;

    /**
     * @throws IllegalArgumentException if the median is below 0 or the error factor below 1, or
     *     either is not finite
     */
    public Lognormal {
        if (!(median >= 0 && median < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a median of " + median + " is below 0 or endless");
        }
        if (!(errorFactor >= 1 && errorFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "an error factor of " + errorFactor + " is below 1 or endless");
        }
    }

    /** A value without spread. */
    public static Lognormal fixed(double value) {
        return new Lognormal(value, 1);
    }

    /** Standard deviation of the natural logarithm (1). */
    public double sigma() {
        return StrictMath.log(errorFactor) / Z95;
    }

    /** The mean, above the median wherever there is spread. */
    public double mean() {
        return median * StrictMath.exp(sigma() * sigma() / 2);
    }

    /** 5th percentile. */
    public double low() {
        return median / errorFactor;
    }

    /** 95th percentile. */
    public double high() {
        return median * errorFactor;
    }

    /** The value so many standard deviations of the logarithm above the median. */
    public double at(double deviations) {
        return median * StrictMath.exp(sigma() * deviations);
    }

    /** The same spread about a multiple of the median. */
    public Lognormal times(double factor) {
        return new Lognormal(median * factor, errorFactor);
    }

    /** The product with another that is independent of this one. */
    public Lognormal times(Lognormal other) {
        double together =
                StrictMath.hypot(StrictMath.log(errorFactor), StrictMath.log(other.errorFactor));
        return new Lognormal(median * other.median, StrictMath.exp(together));
    }
}
