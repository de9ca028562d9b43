package stillturning.report.json;

import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A type by how a value is written, and the keywords of its schema. */
record WrittenType<V>(Function<? super V, ?> how, Map<String, Object> schema)
        implements JsonType<V> {
    @Override
    public @Nullable Object written(V value) {
        return how.apply(value);
    }
}
