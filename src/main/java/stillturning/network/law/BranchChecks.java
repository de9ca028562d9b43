package stillturning.network.law;

/** Refuses impossible numbers at the door, with the value and the mend in the message. */
public final class BranchChecks {
    /** Below this a conductor joins two nets rather than separating them (ohm). */
    static final double LEAST_OHMS = 1e-9;

    private BranchChecks() {}

    static void ohms(double ohms) {
        if (!(ohms >= LEAST_OHMS) || Double.isInfinite(ohms)) {
            throw new IllegalArgumentException(
                    "ohms is "
                            + ohms
                            + "; it must be finite and at least "
                            + LEAST_OHMS
                            + " (join the two nets instead, or use Open)");
        }
    }

    static void positive(String name, double value) {
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; it must be finite and above 0");
        }
    }

    static void notNegative(String name, double value) {
        if (!(value >= 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name
                            + " is "
                            + value
                            + "; it must be finite and at least 0 (turn the branch round instead)");
        }
    }

    /** Refuses an index that is not there. */
    public static void index(String name, int index, int count) {
        if (index < 0 || index >= count) {
            throw outside(name, index, count);
        }
    }

    private static IllegalArgumentException outside(String name, int index, int count) {
        return new IllegalArgumentException(
                name + " " + index + " is not here; there are 0 to " + (count - 1));
    }
}
