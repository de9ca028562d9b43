package stillturning.reliability.asbuilt;

/**
 * What is predicted of something that can be measured, in the unit of its kind.
 *
 * @param low least that keeps to it
 * @param high most that keeps to it
 */
public record Expectation(Measurand subject, double predicted, double low, double high) {

    public Expectation {
        if (!(low <= predicted && predicted <= high)) {
            throw new IllegalArgumentException(
                    subject + ": " + predicted + " is not between " + low + " and " + high);
        }
    }

    /** Whether what was measured keeps to it. */
    public boolean holds(double measured) {
        return measured >= low && measured <= high;
    }
}
