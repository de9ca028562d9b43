package stillturning.assess.ranking;

/** Which end of a criterion is the good one. */
public enum Sense {
    LESS_IS_BETTER,
    MORE_IS_BETTER;

    /**
     * Order of two values, worse first.
     *
     * @return below 0 where {@code a} is worse than {@code b}, 0 where they are equal
     */
    public int compare(double a, double b) {
        // adding 0.0 makes one zero of the two, which Double.compare would tell apart
        int order = Double.compare(a + 0.0, b + 0.0);
        return this == MORE_IS_BETTER ? order : -order;
    }
}
