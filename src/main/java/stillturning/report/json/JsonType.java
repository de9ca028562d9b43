package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A kind of value in JSON: how it is written, and the schema that it keeps to. */
public interface JsonType<V> {

    /** The value in maps, lists, texts and numbers. */
    @Nullable Object written(V value);

    /** Keywords of the schema by their names; a {@link JsonShape} in it stands for itself. */
    Map<String, Object> schema();

    /** The same values, held by one more keyword of the schema. */
    default JsonType<V> with(String keyword, Object value) {
        Map<String, Object> held = new LinkedHashMap<>(schema());
        held.put(keyword, value);
        return new WrittenType<>(this::written, held);
    }
}
