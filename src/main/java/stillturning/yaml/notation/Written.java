package stillturning.yaml.notation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.yaml.notation.RecordLayout.LayoutField;

/**
 * What a file says of a record: quantities still with their units and origins, anything left open
 * where somebody else fills it in. {@link #complete} makes the record of it.
 *
 * @param type the record, whose quantities are plain SI numbers
 * @param values what is said, by key: {@link Given}, a gauge, a word's constant, a plain number, a
 *     text, a list of these, or what is said of a record inside
 */
public record Written(Class<?> type, Map<String, Object> values) {

    public Written {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** What is said under a key. */
    public Optional<Object> value(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /** The quantity under a key in SI, if it is said. */
    public Optional<Double> si(String key) {
        return value(key).map(v -> ((Given) v).quantity().si());
    }

    /** The same with something else under a key. */
    public Written with(String key, Object value) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.put(key, value);
        return new Written(type, changed);
    }

    /** The same with what it leaves open taken from another, in the order of the fields. */
    public Written filledFrom(Written other) {
        Map<String, Object> filled = new LinkedHashMap<>();
        for (String key : keys()) {
            value(key).or(() -> other.value(key)).ifPresent(value -> filled.put(key, value));
        }
        return new Written(type, filled);
    }

    /** Keys of the record, in its order. */
    public List<String> keys() {
        return RecordLayout.of(type).fields().stream().map(LayoutField::key).toList();
    }

    /** Keys of what must be said and is not. */
    public List<String> open() {
        return RecordLayout.of(type).fields().stream()
                .filter(field -> !field.mayLack())
                .map(LayoutField::key)
                .filter(key -> !values.containsKey(key))
                .toList();
    }

    /**
     * The record.
     *
     * @throws IllegalArgumentException if the record refuses the values
     * @throws IllegalStateException if something is still open
     */
    public Object complete() {
        RecordLayout layout = RecordLayout.of(type);
        @Nullable Object[] parts = new Object[layout.fields().size()];
        for (int i = 0; i < parts.length; i++) {
            LayoutField field = layout.fields().get(i);
            Optional<Object> value = value(field.key()).map(Written::plain);
            if (field.mayLack()) {
                parts[i] = value;
            } else {
                parts[i] =
                        value.orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                type + " lacks its " + field.key()));
            }
        }
        return layout.made(parts);
    }

    private static Object plain(Object value) {
        if (value instanceof Given given) {
            return given.quantity().si();
        }
        if (value instanceof Written written) {
            return written.complete();
        }
        if (value instanceof List<?> list) {
            List<Object> all = new ArrayList<>();
            list.forEach(item -> all.add(plain(item)));
            return List.copyOf(all);
        }
        return value;
    }
}
