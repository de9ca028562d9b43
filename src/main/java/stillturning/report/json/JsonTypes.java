package stillturning.report.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The types of values that results are made of. */
public final class JsonTypes {

    /** A text. */
    public static final JsonType<String> TEXT = plain("string");

    /** Yes or no. */
    public static final JsonType<Boolean> FLAG = plain("boolean");

    /** A whole number. */
    public static final JsonType<Number> WHOLE = plain("integer");

    /** A number with all its digits. */
    public static final JsonType<Double> EXACT = plain("number");

    /** A number to six digits; null where it is not finite. */
    public static final JsonType<Double> NUMBER =
            new WrittenType<>(JsonNumbers::number, Map.of("type", List.of("number", "null")));

    /** A number to six digits that may be missing. */
    public static final JsonType<OptionalDouble> MAYBE =
            new WrittenType<>(v -> JsonNumbers.number(v.orElse(Double.NaN)), NUMBER.schema());

    /** A chance, however small, or a ratio of chances, to six digits. */
    public static final JsonType<Double> CHANCE =
            new WrittenType<>(JsonNumbers::chance, NUMBER.schema());

    /** A list of texts. */
    public static final JsonType<List<? extends String>> TEXTS = list(TEXT);

    private JsonTypes() {}

    private static <V> JsonType<V> plain(String type) {
        return new WrittenType<>(v -> v, Map.of("type", type));
    }

    /** One of an enumeration's constants, in lower case with hyphens. */
    public static <E extends Enum<E>> JsonType<E> word(Class<E> words) {
        List<String> all = Arrays.stream(words.getEnumConstants()).map(JsonNumbers::kebab).toList();
        return new WrittenType<>(JsonNumbers::kebab, keywords("type", "string", "enum", all));
    }

    /** A list. */
    public static <V> JsonType<List<? extends V>> list(JsonType<V> of) {
        return new WrittenType<>(
                all -> {
                    List<@Nullable Object> written = new ArrayList<>();
                    all.forEach(one -> written.add(of.written(one)));
                    return written;
                },
                keywords("type", "array", "items", of.schema()));
    }

    /** Values by name. */
    public static <V> JsonType<Map<String, ? extends V>> map(JsonType<V> of) {
        return new WrittenType<>(
                all -> {
                    Map<String, @Nullable Object> written = new LinkedHashMap<>();
                    all.forEach((name, one) -> written.put(name, of.written(one)));
                    return written;
                },
                keywords("type", "object", "additionalProperties", of.schema()));
    }

    /** A value, or null. */
    public static <V> JsonType<Optional<? extends V>> orNull(JsonType<V> of) {
        return new WrittenType<>(
                maybe -> maybe.isPresent() ? of.written(maybe.get()) : null, nullable(of.schema()));
    }

    private static Map<String, Object> nullable(Map<String, Object> schema) {
        if (!(schema.get("type") instanceof String type)) {
            return schema.containsKey("type")
                    ? schema
                    : Map.of("oneOf", List.of(Map.of("type", "null"), schema));
        }
        Map<String, Object> wider = new LinkedHashMap<>(schema);
        wider.put("type", List.of(type, "null"));
        wider.computeIfPresent(
                "enum",
                (key, values) -> {
                    List<@Nullable Object> all = new ArrayList<>((List<?>) values);
                    all.add(null);
                    return all;
                });
        return wider;
    }

    private static Map<String, Object> keywords(
            String first, Object firstValue, String second, Object secondValue) {
        Map<String, Object> keywords = new LinkedHashMap<>();
        keywords.put(first, firstValue);
        keywords.put(second, secondValue);
        return keywords;
    }
}
