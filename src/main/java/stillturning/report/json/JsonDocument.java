package stillturning.report.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import stillturning.report.Cautions;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A text of JSON that another program reads, and its schema (JSON Schema 2020-12).
 *
 * @param description what the document is; may be empty
 * @param shape with the fields of {@link #start} before its own
 */
public record JsonDocument<T>(String title, String description, JsonShape<T> shape) {

    /** Raised whenever a field changes its meaning or goes away. */
    static final int SCHEMA_VERSION = 2;

    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
    private static final DefaultPrettyPrinter LISTS_IN_A_LINE =
            new DefaultPrettyPrinter().withObjectIndenter(INDENT);
    private static final DefaultPrettyPrinter ALL_LINES = LISTS_IN_A_LINE.withArrayIndenter(INDENT);
    private static final DefaultPrettyPrinter SCHEMA =
            new DefaultPrettyPrinter(
                            Separators.createDefaultInstance()
                                    .withObjectNameValueSpacing(Separators.Spacing.AFTER))
                    .withObjectIndenter(INDENT)
                    .withArrayIndenter(INDENT);

    /** What every document starts with. */
    public static <T> JsonShape<T> start() {
        return JsonDocument.<T>versioned()
                .text("caution", any -> Cautions.SHORT)
                .says("What must be said wherever the result is used.");
    }

    /** The start of a document that tells no result. */
    public static <T> JsonShape<T> versioned() {
        return JsonShape.<T>named("document")
                .field(
                        "schemaVersion",
                        JsonTypes.WHOLE.with("const", SCHEMA_VERSION),
                        any -> SCHEMA_VERSION);
    }

    /** The text, short lists in one line. */
    public String text(T of) {
        return print(shape.written(of), LISTS_IN_A_LINE);
    }

    /** The text, every member of a list on a line of its own. */
    public String longText(T of) {
        return print(shape.written(of), ALL_LINES);
    }

    /** The document as a field of another; its own schema says what stands in it. */
    JsonType<T> inside() {
        return new WrittenType<>(shape::written, Map.of("type", "object"));
    }

    /** The schema. */
    public String schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        if (!description.isEmpty()) {
            schema.put("description", description);
        }
        Map<String, JsonShape<?>> used = new TreeMap<>();
        schema.putAll(resolved(shape.definition(), used));
        Map<String, Object> definitions = new TreeMap<>();
        while (definitions.size() < used.size()) {
            for (JsonShape<?> one : List.copyOf(used.values())) {
                definitions.put(one.name(), resolved(one.definition(), used));
            }
        }
        if (!definitions.isEmpty()) {
            schema.put("$defs", definitions);
        }
        return print(schema, SCHEMA);
    }

    private static Map<String, Object> resolved(
            Map<String, Object> schema, Map<String, JsonShape<?>> used) {
        Map<String, Object> resolved = new LinkedHashMap<>();
        for (Entry<String, Object> keyword : schema.entrySet()) {
            if (keyword.getValue() instanceof JsonShape<?> shape) {
                JsonShape<?> before = used.putIfAbsent(shape.name(), shape);
                if (before != null && !before.definition().equals(shape.definition())) {
                    throw new IllegalArgumentException(
                            "two shapes are called " + shape.name() + "; rename one");
                }
                resolved.put("$ref", "#/$defs/" + shape.name());
            } else {
                resolved.put(keyword.getKey(), part(keyword.getValue(), used));
            }
        }
        return resolved;
    }

    @SuppressWarnings("unchecked") // every map in a schema has keywords or names as its keys
    private static Object part(Object part, Map<String, JsonShape<?>> used) {
        if (part instanceof Map<?, ?> map) {
            return resolved((Map<String, Object>) map, used);
        }
        if (part instanceof List<?> list) {
            List<@Nullable Object> parts = new ArrayList<>();
            list.forEach(one -> parts.add(one == null ? null : part(one, used)));
            return parts;
        }
        return part;
    }

    private static String print(Object tree, DefaultPrettyPrinter printer) {
        return JsonMapper.builder()
                        .enable(SerializationFeature.INDENT_OUTPUT)
                        .defaultPrettyPrinter(printer)
                        .build()
                        .writeValueAsString(tree)
                + "\n";
    }
}
