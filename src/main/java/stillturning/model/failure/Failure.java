package stillturning.model.failure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate.Hit;

/**
 * Something that goes wrong at t = 0.
 *
 * @param name unique in the candidate: {@code "main-bus: short to ground"}
 * @param hits failure modes that happen together
 * @param levers positions that levers are moved to
 * @param inTurn those of the levers that a hand moves one after the other, in their order; the
 *     others stand so from the first instant
 * @param dark cues whose lamp stays dark, whatever they watch
 * @param left levers that were left so before the flight, without anybody knowing
 */
public record Failure(
        String name,
        List<Hit> hits,
        Map<String, String> levers,
        Set<String> inTurn,
        Set<String> dark,
        Set<String> left) {

    /** What a dead lamp is called: a failure mode of its cue. */
    public static final String DEAD_LAMP = "indicator dead";

    public Failure {
        hits = List.copyOf(hits);
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
        inTurn = Collections.unmodifiableSet(new LinkedHashSet<>(inTurn));
        dark = Collections.unmodifiableSet(new LinkedHashSet<>(dark));
        left = Collections.unmodifiableSet(new LinkedHashSet<>(left));
    }

    /** One of which somebody knows where every lever stands. */
    public Failure(
            String name,
            List<Hit> hits,
            Map<String, String> levers,
            Set<String> inTurn,
            Set<String> dark) {
        this(name, hits, levers, inTurn, dark, Set.of());
    }

    /** One whose levers all stand so from the first instant. */
    public Failure(String name, List<Hit> hits, Map<String, String> levers) {
        this(name, hits, levers, Set.of(), Set.of());
    }

    /** A dead lamp: what its cue watches happens, and nobody sees it. */
    public static Failure dark(String cue) {
        return new Failure(cue + ": " + DEAD_LAMP, List.of(), Map.of(), Set.of(), Set.of(cue));
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
        Set<String> turns = new LinkedHashSet<>(inTurn);
        turns.addAll(other.inTurn);
        Set<String> unseen = new LinkedHashSet<>(dark);
        unseen.addAll(other.dark);
        Set<String> wrong = new LinkedHashSet<>(left);
        wrong.addAll(other.left);
        return new Failure(name + " + " + other.name, all, moved, turns, unseen, wrong);
    }

    /** Whether nothing is broken and a hand does it all, which then knows what it does. */
    public boolean isOwnAct() {
        return hits.isEmpty() && !left.containsAll(levers.keySet());
    }

    /** Levers left in these positions before the flight, without anybody knowing. */
    public static Failure left(String name, Map<String, String> positions) {
        return new Failure(name, List.of(), positions, Set.of(), Set.of(), positions.keySet());
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

    /** Moves made by hand one after the other, in their order, nothing broken. */
    public static Failure drill(String name, Map<String, String> moves) {
        return new Failure(name, List.of(), moves, moves.keySet(), Set.of());
    }

    /** Where levers stand from the first instant. */
    public Map<String, String> atOnce() {
        return chosen(false);
    }

    /** Where a hand moves levers, in its order. */
    public Map<String, String> moves() {
        return chosen(true);
    }

    private Map<String, String> chosen(boolean byHand) {
        Map<String, String> chosen = new LinkedHashMap<>(levers);
        chosen.keySet().removeIf(lever -> inTurn.contains(lever) != byHand);
        return chosen;
    }

    /** Levers moved, nothing broken. */
    public static Failure levers(String name, Map<String, String> levers) {
        return new Failure(name, List.of(), levers);
    }
}
