package stillturning.assess.ranking;

/**
 * What a value of a criterion is worth: nothing at the worst end and beyond, half at the halfway
 * value, everything at the best end and beyond, straight in between. Its ends are stated, so they
 * move with no candidate: a scale between the worst and the best of the company lets a third
 * candidate turn the order of two others.
 *
 * @param worst as bad as could be accepted
 * @param halfway worth half of the way from the worst to the best end
 * @param best as good as is needed
 * @see "V. Belton, T. Gear, Omega 11 (1983) 228-230: reversal of order by normalising over the
 *     alternatives (from memory)"
 */
public record Scale(double worst, double halfway, double best) {

    /** Where a value lies. */
    public enum ScalePlace {
        BEYOND_WORST,
        WITHIN,
        BEYOND_BEST
    }

    public Scale {
        if (!Double.isFinite(worst) || !Double.isFinite(best) || worst == best) {
            throw new IllegalArgumentException(
                    "scale from " + worst + " to " + best + " needs two different finite ends");
        }
        if (!(halfway > Math.min(worst, best) && halfway < Math.max(worst, best))) {
            throw new IllegalArgumentException(
                    "halfway " + halfway + " is not between " + worst + " and " + best);
        }
    }

    /** One that is straight from end to end. */
    public static Scale straight(double worst, double best) {
        return new Scale(worst, worst + (best - worst) / 2, best);
    }

    /** Worth of a value between 0 (worst end or beyond) and 1 (best end or beyond). */
    public double worthOf(double value) {
        return switch (placeOf(value)) {
            case BEYOND_WORST -> 0;
            case BEYOND_BEST -> 1;
            case WITHIN ->
                    (value - halfway) * (best - worst) > 0
                            ? 0.5 + 0.5 * (value - halfway) / (best - halfway)
                            : 0.5 * (value - worst) / (halfway - worst);
        };
    }

    /** Whether a value lies on the scale, its ends included. */
    public ScalePlace placeOf(double value) {
        double sign = Math.signum(best - worst);
        if (sign * value < sign * worst) {
            return ScalePlace.BEYOND_WORST;
        }
        return sign * value > sign * best ? ScalePlace.BEYOND_BEST : ScalePlace.WITHIN;
    }
}
