package stillturning.files.record;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A form with what was written into it.
 *
 * @param study fingerprint of the files from which it was made; empty if it does not say
 * @param date day of the measurements, such as {@code 2026-05-17}; empty if it does not say
 * @param by who measured; empty if it does not say
 * @param filled in the form's order
 * @param former what stands in an older form and is no longer asked for, in its order
 */
public record FilledForm(
        String study, String date, String by, List<Filled> filled, List<Former> former) {

    /**
     * A blank that was filled in.
     *
     * @param path place inside the form
     * @param values in the units of SI; of a result 1 for passed and 0 for failed
     * @param text as written
     */
    public record Filled(String path, List<FilledValue> values, String text) {
        public Filled {
            values = List.copyOf(values);
        }
    }

    /** What an older form asked for and the study does not any more: its place, as written. */
    public record Former(String path, String text) {}

    /**
     * A value.
     *
     * @param at beside which other it was measured, if one is said
     */
    public record FilledValue(double value, OptionalDouble at) {}

    public FilledForm {
        filled = List.copyOf(filled);
        former = List.copyOf(former);
    }
}
