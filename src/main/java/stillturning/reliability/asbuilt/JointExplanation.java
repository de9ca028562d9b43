package stillturning.reliability.asbuilt;

/**
 * Two values that, were both others at once, would explain readings that do not keep to their
 * prediction.
 *
 * @param correlation of the errors of the two, -1 to 1
 * @param mended how many of those that disagree would then keep to their prediction
 * @param disagreeing how many disagree
 * @param spoilt how many of the others would then no longer keep to theirs
 */
public record JointExplanation(
        Needed one, Needed other, double correlation, int mended, int disagreeing, int spoilt) {

    /**
     * One of the two.
     *
     * @param needed what it would have to be, by least squares with the other
     * @param half half the interval of 95 % of that, the other being unknown too
     */
    public record Needed(OpenValue value, double needed, double half) {

        /** Whether it lies within what the study leaves open. */
        public boolean likely() {
            return needed >= value.low() && needed <= value.high();
        }
    }

    /** Whether both lie within what the study leaves open. */
    public boolean likely() {
        return one.likely() && other.likely();
    }
}
