package stillturning.story.timeline.stride;

/**
 * How far and how exactly charges and heats are carried at once.
 *
 * @param pair the formulas by which they are carried
 * @param longestSeconds no further than this (s)
 * @param tolerance charge or heat may be wrong by this much a step
 * @param located events are found to this part of the step
 * @param missing share of all energy, or of a battery's full charge, that may be missing in the end
 */
public record StepLimits(
        RungeKuttaPair pair,
        double longestSeconds,
        double tolerance,
        double located,
        double missing) {

    /** For proofs: as long as a tolerance allows that no printed number shows. */
    public static final StepLimits EXACT = upTo(Double.POSITIVE_INFINITY);

    /** For comparing candidates: times are good to a few parts in 1e5. */
    public static final StepLimits QUICK =
            new StepLimits(
                    RungeKuttaPair.BOGACKI_SHAMPINE, Double.POSITIVE_INFINITY, 6e-7, 1e-6, 1e-4);

    /** The tolerance for proofs, no further than this (s). */
    public static StepLimits upTo(double longestSeconds) {
        // across a kink of a law, such as a joint of the capacity's curve by temperature, a step is
        // good for some 1e-7
        return new StepLimits(RungeKuttaPair.DORMAND_PRINCE, longestSeconds, 3e-10, 0, 1e-5);
    }

    /** For proofs, and no further than these. */
    public StepLimits exact() {
        return upTo(longestSeconds);
    }
}
