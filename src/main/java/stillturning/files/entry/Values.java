package stillturning.files.entry;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.Binder;
import stillturning.yaml.Given;
import stillturning.yaml.Places;

/** Goes over the measured values and prices of an entry, whatever its type. */
public final class Values {

    /** What becomes of each value, given its path in the document. */
    public interface Change {
        /** What becomes of a measured value. */
        Given given(String path, Given value);

        /** What becomes of a price. */
        Price price(String path, Price value);
    }

    private Values() {}

    /** The same entry with every value changed, in the order of its fields. */
    public static <T extends Record> T mapped(T entry, String path, Change change) {
        @SuppressWarnings("unchecked") // a record is rebuilt as what it was
        T mapped = (T) map(entry, path, change);
        return mapped;
    }

    /** The same part with every value changed. */
    public static PartEntry mapped(PartEntry entry, String path, Change change) {
        return (PartEntry) map(entry, path, change);
    }

    /**
     * A part with what it leaves open taken from another of its kind.
     *
     * @throws IllegalArgumentException if the two are not of one kind
     */
    public static PartEntry filled(PartEntry entry, PartEntry from) {
        if (entry.getClass() != from.getClass()) {
            throw new IllegalArgumentException(entry.getClass() + " is no " + from.getClass());
        }
        RecordComponent[] components = entry.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            Object own = read(components[i], entry);
            boolean open = own instanceof Optional<?> optional && optional.isEmpty();
            values[i] = open ? read(components[i], from) : own;
        }
        return (PartEntry) make(entry.getClass(), values);
    }

    /** Keys of what neither the person nor the catalogue has said of a part. */
    public static List<String> open(PartEntry entry) {
        return Arrays.stream(entry.getClass().getRecordComponents())
                .filter(c -> read(c, entry) instanceof Optional<?> value && value.isEmpty())
                .map(Binder::keyOf)
                .toList();
    }

    private static Object map(Object value, String path, Change change) {
        if (value instanceof Given given) {
            return change.given(path, given);
        }
        if (value instanceof Price price) {
            return change.price(path, price);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(v -> map(v, path, change));
        }
        if (value instanceof List<?> list) {
            List<Object> mapped = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                mapped.add(map(list.get(i), Places.item(path, i), change));
            }
            return List.copyOf(mapped);
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> mapped = new LinkedHashMap<>();
            map.forEach(
                    (key, v) -> mapped.put(key, map(v, Places.under(path, (String) key), change)));
            return Collections.unmodifiableMap(mapped);
        }
        return isEntry(value) ? record(value, path, change) : value;
    }

    private static boolean isEntry(Object value) {
        return value.getClass().isRecord() && value.getClass().getPackage() == thisPackage();
    }

    private static Package thisPackage() {
        return Values.class.getPackage();
    }

    private static Object record(Object entry, String path, Change change) {
        Object[] values =
                Arrays.stream(entry.getClass().getRecordComponents())
                        .map(c -> map(read(c, entry), Places.under(path, Binder.keyOf(c)), change))
                        .toArray();
        return make(entry.getClass(), values);
    }

    private static Object read(RecordComponent component, Object entry) {
        try {
            return component.getAccessor().invoke(entry);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("component " + component, impossible);
        }
    }

    private static Object make(Class<?> type, Object[] values) {
        Class<?>[] types =
                Arrays.stream(type.getRecordComponents())
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            throw new IllegalStateException("record " + type, refused.getCause());
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("record " + type, impossible);
        }
    }
}
