package stillturning.structure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a candidate's shape says once a part is gone, with all that it does.
 *
 * @param part the part; empty for nothing
 * @param supplied whether enough loads for the engine still have a way out and back
 * @param levers where levers stand for that, of those that may be moved
 * @param evidence the ways that are left, part by part, or why there are too few
 */
public record Removal(
        Optional<String> part, boolean supplied, Map<String, String> levers, String evidence) {
    public Removal {
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    }
}
