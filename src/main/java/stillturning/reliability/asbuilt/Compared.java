package stillturning.reliability.asbuilt;

import java.util.OptionalDouble;

/**
 * A prediction and what was measured, in the unit of its kind.
 *
 * @param measured empty where it was not
 * @param half half the interval of 95 % of it, where one is known
 */
public record Compared(Expectation expectation, OptionalDouble measured, OptionalDouble half) {

    /** How the two stand to each other. */
    public enum Agreement {
        AGREES,
        DISAGREES,
        NOT_MEASURED
    }

    /** What was not measured. */
    public static Compared not(Expectation expectation) {
        return new Compared(expectation, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** How the two stand to each other. */
    public Agreement verdict() {
        if (measured.isEmpty()) {
            return Agreement.NOT_MEASURED;
        }
        return expectation.holds(measured.getAsDouble()) ? Agreement.AGREES : Agreement.DISAGREES;
    }
}
