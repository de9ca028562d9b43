package stillturning.parts.element.curve;

/** One-line guards of this room's records. */
public final class Require {
    private Require() {}

    public static void positive(String element, String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is not a finite number above 0");
        }
    }

    public static void notNegative(String element, String what, double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is below 0 or no number");
        }
    }

    public static void fraction(String element, String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is not between 0 and 1");
        }
    }
}
