package stillturning.files.value;

import stillturning.files.value.Variation.ValuePlace;
import stillturning.quantity.Dimension;

/**
 * Between which limits a value is, in the unit that its dimension counts in.
 *
 * @param text the value as written
 * @param stated whether somebody wrote the range; otherwise it follows from the value's origin
 */
public record Range(
        ValuePlace place,
        String text,
        Dimension dimension,
        double low,
        double likely,
        double high,
        boolean stated) {

    public Range {
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    place.path() + ": " + likely + " is not between " + low + " and " + high);
        }
    }
}
