package stillturning.yaml.notation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a type is read of which a key says the kind. Whatever a kind says may be left open, to be
 * filled in by somebody else.
 *
 * @param key the key
 * @param common the record of what every kind may say, optional all of it
 * @param values the record of what a kind says, by its word
 * @param maker makes the type of it
 */
public record Kinds<C, T>(
        String key, Class<C> common, Map<String, Class<?>> values, Maker<C, T> maker) {

    public Kinds {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** Makes the value of what is written. */
    @FunctionalInterface
    public interface Maker<C, T> {
        /** The value of this kind. */
        T make(String word, C common, Written values);
    }
}
