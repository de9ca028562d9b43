package stillturning.desktop.view.size;

/** Cells of numbers in order of size; what is no number comes first. */
final class Numbers {

    private Numbers() {}

    static int compare(String one, String other) {
        return Double.compare(value(one), value(other));
    }

    private static double value(String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException words) {
            return Double.NEGATIVE_INFINITY;
        }
    }
}
