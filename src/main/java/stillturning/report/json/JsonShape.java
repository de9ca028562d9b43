package stillturning.report.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import stillturning.report.table.Column;

/**
 * An object of JSON, told once: its fields in order, each with its type, where it comes from, and
 * what it says. Both the text and its schema are made from it.
 */
public final class JsonShape<T> implements JsonType<T> {

    /** Key under which a shape stands in a schema that uses it. */
    static final String SHAPE = "shape";

    private final String name;
    private final List<Field<T, ?>> fields;

    /** A field, read from an object and written. */
    private record Field<T, V>(
            String key,
            JsonType<V> type,
            Function<? super T, ? extends V> get,
            String says,
            boolean leftOutWhereEmpty) {

        void write(T object, Map<String, @Nullable Object> into) {
            @Nullable Object value = type.written(get.apply(object));
            if (!leftOutWhereEmpty || !List.of().equals(value)) {
                into.put(key, value);
            }
        }

        Map<String, Object> schema() {
            return says.isEmpty() ? type.schema() : type.with("description", says).schema();
        }
    }

    private JsonShape(String name, List<Field<T, ?>> fields) {
        this.name = name;
        this.fields = List.copyOf(fields);
    }

    /**
     * A shape without fields.
     *
     * @param name its key among the definitions of a schema
     */
    public static <T> JsonShape<T> named(String name) {
        return new JsonShape<>(name, List.of());
    }

    /** The columns of a table that other programs read. */
    public static <T> JsonShape<T> of(String name, List<Column<T>> columns) {
        JsonShape<T> shape = named(name);
        for (Column<T> column : columns) {
            if (column.field().isPresent()) {
                shape = shape.column(column.field().get());
            }
        }
        return shape;
    }

    private JsonShape<T> column(Column.DataField<T> of) {
        return of.type() == Double.class
                ? field(of.key(), JsonTypes.NUMBER, of.get().andThen(Double.class::cast))
                : field(of.key(), JsonTypes.TEXT, of.get().andThen(String.class::cast));
    }

    String name() {
        return name;
    }

    /** The same with one more field at the end. */
    public <V> JsonShape<T> field(
            String key, JsonType<V> type, Function<? super T, ? extends V> get) {
        return with(new Field<>(key, type, get, "", false));
    }

    /** The same with a text at the end. */
    public JsonShape<T> text(String key, Function<? super T, String> get) {
        return field(key, JsonTypes.TEXT, get);
    }

    /** The same with a list of texts at the end. */
    public JsonShape<T> texts(String key, Function<? super T, List<String>> get) {
        return field(key, JsonTypes.TEXTS, get);
    }

    /** The same with yes or no at the end. */
    public JsonShape<T> flag(String key, Predicate<? super T> get) {
        return field(key, JsonTypes.FLAG, get::test);
    }

    /** The same with a whole number at the end. */
    public JsonShape<T> whole(String key, Function<? super T, ? extends Number> get) {
        return field(key, JsonTypes.WHOLE, get);
    }

    /** The same with a number to six digits at the end, null where it is not finite. */
    public JsonShape<T> number(String key, ToDoubleFunction<? super T> get) {
        return field(key, JsonTypes.NUMBER, get::applyAsDouble);
    }

    /** The same with a chance, however small, or a ratio of chances at the end. */
    public JsonShape<T> chance(String key, ToDoubleFunction<? super T> get) {
        return field(key, JsonTypes.CHANCE, get::applyAsDouble);
    }

    /** The same with one of an enumeration's constants at the end. */
    public <E extends Enum<E>> JsonShape<T> word(
            String key, Class<E> words, Function<? super T, E> get) {
        return field(key, JsonTypes.word(words), get);
    }

    /** The same with a list at the end. */
    public <V> JsonShape<T> list(
            String key, JsonType<V> of, Function<? super T, ? extends List<? extends V>> get) {
        return field(key, JsonTypes.list(of), get);
    }

    /** The same with the rows of a table at the end, its columns that other programs read. */
    public <V> JsonShape<T> rows(
            String key, List<Column<V>> columns, Function<? super T, List<V>> get) {
        return field(key, JsonTypes.list(of(key, columns)), get);
    }

    /** The same with values by name at the end. */
    public <V> JsonShape<T> map(
            String key,
            JsonType<V> of,
            Function<? super T, ? extends Map<String, ? extends V>> get) {
        return field(key, JsonTypes.map(of), get);
    }

    /** The same with a value or null at the end. */
    public <V> JsonShape<T> maybe(
            String key, JsonType<V> of, Function<? super T, ? extends Optional<? extends V>> get) {
        return field(key, JsonTypes.orNull(of), get);
    }

    /** The same with the fields of another shape at the end. */
    public <V> JsonShape<T> fieldsOf(JsonShape<V> other, Function<? super T, ? extends V> get) {
        JsonShape<T> wider = this;
        for (Field<V, ?> field : other.fields) {
            wider = wider.with(through(field, get));
        }
        return wider;
    }

    private static <T, V, F> Field<T, F> through(
            Field<V, F> field, Function<? super T, ? extends V> get) {
        return new Field<>(
                field.key,
                field.type,
                object -> field.get.apply(get.apply(object)),
                field.says,
                field.leftOutWhereEmpty);
    }

    /** The same, its last field described. */
    public JsonShape<T> says(String description) {
        return instead(last(), description, last().leftOutWhereEmpty);
    }

    /** The same, its last field left out where it is an empty list. */
    public JsonShape<T> leftOutWhereEmpty() {
        return instead(last(), last().says, true);
    }

    private Field<T, ?> last() {
        return fields.get(fields.size() - 1);
    }

    private <V> JsonShape<T> instead(Field<T, V> last, String says, boolean leftOut) {
        return new JsonShape<T>(name, fields.subList(0, fields.size() - 1))
                .with(new Field<>(last.key, last.type, last.get, says, leftOut));
    }

    private JsonShape<T> with(Field<T, ?> field) {
        List<Field<T, ?>> longer = new ArrayList<>(fields);
        longer.add(field);
        return new JsonShape<>(name, longer);
    }

    @Override
    public Map<String, @Nullable Object> written(T object) {
        Map<String, @Nullable Object> written = new LinkedHashMap<>();
        fields.forEach(field -> field.write(object, written));
        return written;
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of(SHAPE, this);
    }

    /** The schema of the object itself, the shapes in it still standing for themselves. */
    Map<String, Object> definition() {
        Map<String, Object> properties = new LinkedHashMap<>();
        fields.forEach(field -> properties.put(field.key, field.schema()));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        schema.put("properties", properties);
        schema.put(
                "required",
                fields.stream().filter(f -> !f.leftOutWhereEmpty).map(Field::key).toList());
        return schema;
    }
}
