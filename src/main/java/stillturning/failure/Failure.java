package stillturning.failure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate.Hit;

/**
 * Something that goes wrong at t = 0.
 *
 * @param name unique in the candidate: {@code "main-bus: short to ground"}
 * @param hits failure modes that happen together
 * @param levers positions that levers are moved to
 */
public record Failure(String name, List<Hit> hits, Map<String, String> levers) {

    public Failure {
        hits = List.copyOf(hits);
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    }

    /** One failure mode of one part. */
    public static Failure of(Hit hit) {
        return new Failure(hit.part() + ": " + hit.mode().name(), List.of(hit), Map.of());
    }

    /** Levers moved, nothing broken. */
    public static Failure levers(String name, Map<String, String> levers) {
        return new Failure(name, List.of(), levers);
    }
}
