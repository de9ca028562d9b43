package stillturning.files.value;

import java.util.Map;

/**
 * Some values taken to be others, to find out whether they matter.
 *
 * @param changes what becomes of a value, by its place
 * @param classes usual class of a kind of part, by the kind's word
 */
public record Variation(Map<ValuePlace, ValueChange> changes, Map<String, String> classes) {

    /** Everything as it is. */
    public static final Variation NONE = new Variation(Map.of(), Map.of());

    /**
     * Where a value stands.
     *
     * @param file name of the file in the study's folder
     * @param path path of the value, as its {@link Assumption} gives it
     */
    public record ValuePlace(String file, String path) {}

    /**
     * What becomes of a value.
     *
     * @param factor what it is multiplied by
     * @param more what is added then, in the unit that its dimension counts in
     */
    public record ValueChange(double factor, double more) {
        public ValueChange {
            if (!(factor > 0 && Double.isFinite(factor))) {
                throw new IllegalArgumentException("factor " + factor + " is not above 0");
            }
        }

        double of(double value) {
            return factor * value + more;
        }
    }

    public Variation {
        changes = Map.copyOf(changes);
        classes = Map.copyOf(classes);
    }

    /** One value multiplied by a factor. */
    public Variation(String file, String path, double factor) {
        this(Map.of(new ValuePlace(file, path), new ValueChange(factor, 0)), Map.of());
    }

    /**
     * Parts of one kind, as far as they name no class, of another class than they are taken for.
     */
    public static Variation ofClass(String kind, String name) {
        return new Variation(Map.of(), Map.of(kind, name));
    }
}
