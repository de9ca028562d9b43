package stillturning.bench;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.parts.Part;

/**
 * A result written out to its last number, a line each with the way to it, so that a test can hold
 * the whole of it against what was kept. Numbers have five digits: what the stride of the time line
 * leaves open does not show.
 */
public final class Lines {

    private final List<String> written = new ArrayList<>();

    private Lines() {}

    public static List<String> of(String name, Object result) {
        Lines lines = new Lines();
        lines.write(name, result);
        return lines.written;
    }

    private void write(String way, Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> sorted = new TreeMap<>();
            map.forEach((key, inner) -> sorted.put(String.valueOf(key), inner));
            sorted.forEach((key, inner) -> write(way + "." + key, inner));
        } else if (value instanceof Collection<?> several && !isPlain(several)) {
            int place = 0;
            for (Object inner : inOrder(several)) {
                write(way + "[" + place++ + "]", inner);
            }
        } else if (value instanceof Record record && !isPlain(record)) {
            writeFields(way, record);
        } else {
            written.add(way + " " + plain(value));
        }
    }

    /** What is plain on one line, the rest on lines of its own. */
    private void writeFields(String way, Record record) {
        Map<String, Object> fields = fields(record);
        String line =
                fields.entrySet().stream()
                        .filter(e -> isPlain(e.getValue()))
                        .map(e -> " " + e.getKey() + "=" + plain(e.getValue()))
                        .collect(Collectors.joining());
        if (!line.isEmpty()) {
            written.add(way + line);
        }
        fields.forEach(
                (name, inner) -> {
                    if (!isPlain(inner)) {
                        write(way + "." + name, inner);
                    }
                });
    }

    /** The components in their order, then what the record says of itself in a number or a word. */
    private static Map<String, Object> fields(Record record) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            put(fields, component.getAccessor(), record);
        }
        Stream.of(record.getClass().getDeclaredMethods())
                .filter(m -> m.getParameterCount() == 0 && Modifier.isPublic(m.getModifiers()))
                .filter(
                        m ->
                                m.getReturnType() == boolean.class
                                        || m.getReturnType() == double.class)
                .sorted(Comparator.comparing(Method::getName))
                .forEach(m -> put(fields, m, record));
        return fields;
    }

    private static void put(Map<String, Object> fields, Method method, Record record) {
        Object value;
        try {
            method.setAccessible(true);
            value = method.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(method.getName(), e);
        }
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> fields.put(method.getName(), inner));
        } else if (value instanceof OptionalDouble optional) {
            optional.ifPresent(number -> fields.put(method.getName(), number));
        } else if (value instanceof OptionalInt optional) {
            optional.ifPresent(number -> fields.put(method.getName(), number));
        } else {
            fields.put(method.getName(), value);
        }
    }

    /** A set has no order but this: each run of Java would give it another. */
    private static Collection<?> inOrder(Collection<?> several) {
        return several instanceof Set<?> set
                ? set.stream().sorted(Comparator.comparing(Lines::text)).toList()
                : several;
    }

    private static String text(Object value) {
        return String.join("\n", of("", value));
    }

    /** Whether it is said in a word: a number, a name, a list of such. */
    private static boolean isPlain(Object value) {
        if (value instanceof Collection<?> several) {
            return several.stream().noneMatch(Record.class::isInstance);
        }
        return value instanceof Part
                || value instanceof Candidate
                || !(value instanceof Record || value instanceof Map);
    }

    private static String plain(Object value) {
        if (value instanceof Candidate candidate) {
            return candidate.id();
        }
        if (value instanceof Part part) {
            return part.id();
        }
        if (value instanceof Collection<?> several) {
            return inOrder(several).stream().map(Lines::plain).collect(Collectors.joining("|"));
        }
        return value instanceof Double number ? digits(number) : String.valueOf(value);
    }

    private static String digits(double number) {
        if (Math.abs(number) < 1e-9) {
            return "0";
        }
        return String.format(Locale.ROOT, "%.5g", number);
    }
}
