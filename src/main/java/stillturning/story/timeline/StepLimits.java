package stillturning.story.timeline;

/**
 * How far and how exactly charges and heats are carried at once.
 *
 * @param longestSeconds no further than this (s)
 * @param tolerance charge or heat may be wrong by this much a step
 * @param missing share of all energy, or of a battery's full charge, that may be missing in the end
 */
record StepLimits(double longestSeconds, double tolerance, double missing) {

    /** As long as the tolerance allows. */
    static final StepLimits EXACT = upTo(Double.POSITIVE_INFINITY);

    /** For whether the engine lasts, not for when what happens. */
    static final StepLimits QUICK = new StepLimits(Double.POSITIVE_INFINITY, 1e-5, 1e-3);

    /** The usual tolerance, no further than this (s). */
    static StepLimits upTo(double longestSeconds) {
        // across a kink of a law, such as a joint of the capacity's curve by temperature, a step is
        // good for some 1e-7
        return new StepLimits(longestSeconds, 3e-10, 1e-5);
    }
}
