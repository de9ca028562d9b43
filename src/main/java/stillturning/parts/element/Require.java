package stillturning.parts.element;

/** One-line guards of this room's records. */
final class Require {
    private Require() {}

    static void positive(String element, String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is not a finite number above 0");
        }
    }

    static void notNegative(String element, String what, double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is below 0 or no number");
        }
    }

    static void fraction(String element, String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(
                    element + ": " + what + " " + value + " is not between 0 and 1");
        }
    }
}
