package stillturning.reliability.asbuilt;

/**
 * A value of the study that is not certain, in the unit that its dimension counts in.
 *
 * @param name by which the caller finds it again
 */
public record OpenValue(String name, double low, double likely, double high) {

    public OpenValue {
        if (!(low <= likely && likely <= high && low < high)) {
            throw new IllegalArgumentException(
                    name + ": " + likely + " is not between " + low + " and " + high);
        }
    }

    double half() {
        return (high - low) / 2;
    }
}
