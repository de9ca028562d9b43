package stillturning.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Immutable maps that keep the order in which a person wrote them. */
final class Ordered {
    private Ordered() {}

    static <K, V> Map<K, V> copyOf(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
