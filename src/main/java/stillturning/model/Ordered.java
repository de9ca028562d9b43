package stillturning.model;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Immutable maps that keep the order in which a person wrote them. */
final class Ordered {
    private Ordered() {}

    /** A copy, or the map itself where it is one already. */
    static <K, V> Map<K, V> copyOf(Map<K, V> map) {
        return map instanceof Kept ? map : new Kept<>(new LinkedHashMap<>(map));
    }

    /** A map that nobody else holds. */
    private static final class Kept<K, V> extends AbstractMap<K, V> {
        private final Map<K, V> entries;

        Kept(Map<K, V> entries) {
            this.entries = Collections.unmodifiableMap(entries);
        }

        @Override
        public Set<Entry<K, V>> entrySet() {
            return entries.entrySet();
        }

        @Override
        public @Nullable V get(@Nullable Object key) {
            return entries.get(key);
        }

        @Override
        public boolean containsKey(@Nullable Object key) {
            return entries.containsKey(key);
        }
    }
}
