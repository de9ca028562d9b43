package stillturning.model.failure;

import java.util.ArrayList;
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

    /**
     * Both at the same moment, named "one + other".
     *
     * @throws IllegalArgumentException if they put one lever into two positions
     */
    public Failure and(Failure other) {
        List<Hit> all = new ArrayList<>(hits);
        other.hits.stream().filter(hit -> !hits.contains(hit)).forEach(all::add);
        Map<String, String> moved = new LinkedHashMap<>(levers);
        other.levers.forEach(
                (lever, position) -> {
                    String before = moved.putIfAbsent(lever, position);
                    if (before != null && !before.equals(position)) {
                        throw new IllegalArgumentException(
                                lever + " cannot be both " + before + " and " + position);
                    }
                });
        return new Failure(name + " + " + other.name, all, moved);
    }

    /** Whether both can come at the same moment: no lever is in two positions. */
    public boolean goesWith(Failure other) {
        return levers.entrySet().stream()
                .allMatch(
                        moved ->
                                other.levers
                                        .getOrDefault(moved.getKey(), moved.getValue())
                                        .equals(moved.getValue()));
    }

    /** Levers moved, nothing broken. */
    public static Failure levers(String name, Map<String, String> levers) {
        return new Failure(name, List.of(), levers);
    }
}
