package stillturning.assess.findout;

import java.util.function.DoubleFunction;

/**
 * Between which limits a number is.
 *
 * @param words the number with its unit, as people read it
 */
public record OpenInterval(double low, double likely, double high, DoubleFunction<String> words) {

    public OpenInterval {
        if (!(low <= likely && likely <= high && low < high)) {
            throw new IllegalArgumentException(
                    likely + " is not in a range from " + low + " to " + high);
        }
    }

    /** The number at a place, 0 for the low end to 1. */
    public double at(double place) {
        return low + place * (high - low);
    }

    /** Place of the likely value. */
    public double place() {
        return (likely - low) / (high - low);
    }

    /** The number at a place in words. */
    public String wordsAt(double place) {
        return words.apply(at(place));
    }
}
