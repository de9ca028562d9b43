package stillturning.files.entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.RecordLayout;
import stillturning.yaml.notation.Written;

/** Goes over the measured values and prices of an entry, whatever its type. */
public final class Values {

    /** What becomes of each value, given its path in the document. */
    public interface ValueReplacement {
        /** What becomes of a measured value. */
        Given given(String path, Given value);

        /** What becomes of a price. */
        Price price(String path, Price value);
    }

    private Values() {}

    /** The same entry with every value changed, in the order of its fields. */
    public static <T extends Record> T mapped(T entry, String path, ValueReplacement change) {
        @SuppressWarnings("unchecked") // a record is rebuilt as what it was
        T mapped = (T) map(entry, path, change);
        return mapped;
    }

    /** The same part with every value changed. */
    public static PartEntry mapped(PartEntry entry, String path, ValueReplacement change) {
        return entry.mapped(path, change);
    }

    /** What is written of a record, with every value changed. */
    static Written mapped(Written written, String path, ValueReplacement change) {
        Map<String, Object> mapped = new LinkedHashMap<>();
        written.values()
                .forEach(
                        (key, value) ->
                                mapped.put(
                                        key, map(value, DocumentPlaces.under(path, key), change)));
        return new Written(written.type(), mapped);
    }

    /** The same candidate with every value changed by which the pilot sees and acts. */
    public static CandidateEntry cockpitMapped(CandidateEntry entry, ValueReplacement change) {
        return new CandidateEntry(
                entry.candidate(),
                entry.about(),
                entry.parts(),
                entry.returns(),
                entry.links(),
                entry.feeds(),
                entry.wires(),
                entry.arms(),
                entry.fails(),
                entry.shares(),
                entry.leavesOut(),
                entry.positions(),
                entry.reach(),
                mapped(entry.sees(), "sees", change),
                mapped(entry.procedures(), "procedures", change));
    }

    private static <V> Map<String, V> mapped(
            Map<String, V> entries, String path, ValueReplacement change) {
        @SuppressWarnings("unchecked") // a map is rebuilt as what it was
        Map<String, V> mapped = (Map<String, V>) map(entries, path, change);
        return mapped;
    }

    private static Object map(Object value, String path, ValueReplacement change) {
        if (value instanceof Given given) {
            return change.given(path, given);
        }
        if (value instanceof Price price) {
            return change.price(path, price);
        }
        if (value instanceof Written written) {
            return mapped(written, path, change);
        }
        if (value instanceof PartEntry part) {
            return part.mapped(path, change);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(v -> map(v, path, change));
        }
        if (value instanceof List<?> list) {
            List<Object> mapped = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                mapped.add(map(list.get(i), DocumentPlaces.item(path, i), change));
            }
            return List.copyOf(mapped);
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> mapped = new LinkedHashMap<>();
            map.forEach(
                    (key, v) ->
                            mapped.put(
                                    key, map(v, DocumentPlaces.under(path, (String) key), change)));
            return Collections.unmodifiableMap(mapped);
        }
        return isEntry(value) ? record(value, path, change) : value;
    }

    private static boolean isEntry(Object value) {
        return value.getClass().isRecord()
                && !(value instanceof NotInStories)
                && value.getClass().getPackage() == Values.class.getPackage();
    }

    private static Object record(Object entry, String path, ValueReplacement change) {
        RecordLayout layout = RecordLayout.of(entry.getClass());
        Object[] values =
                layout.fields().stream()
                        .map(f -> map(f.of(entry), DocumentPlaces.under(path, f.key()), change))
                        .toArray();
        return layout.made(values);
    }
}
