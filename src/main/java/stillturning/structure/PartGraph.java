package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Directed graph whose vertices belong to parts: to none (a joint), to one, or to several. Removing
 * a part removes every vertex that belongs to it. A part with a lever may have vertices that are
 * never closed together; no way passes two of them.
 */
final class PartGraph {

    /** Closed wherever the part's lever stands. */
    static final long ANY_STAND = -1L;

    private final List<Vertex> vertices;
    private final int[][] next;
    private final Map<Integer, BitSet> verticesOf = new LinkedHashMap<>();

    @SuppressWarnings("ArrayRecordComponent") // never leaves the graph, never written
    private record Vertex(int[] parts, long stands) {
        boolean movesWith(int part) {
            return stands != ANY_STAND && parts[0] == part;
        }

        boolean allows(int part, long stand) {
            return !movesWith(part) || (stands & stand) != 0;
        }
    }

    /** Collects vertices and arcs. */
    static final class Builder {
        private final List<Vertex> vertices = new ArrayList<>();
        private final List<Set<Integer>> next = new ArrayList<>();

        /** A vertex of these parts, closed at any stand of a lever. */
        int vertex(int... parts) {
            return add(new Vertex(parts.clone(), ANY_STAND));
        }

        /** A vertex of a part, closed at some stands of its lever, a bit each. */
        int vertexAt(long stands, int part) {
            return add(new Vertex(new int[] {part}, stands));
        }

        void arc(int from, int to) {
            if (from != to) {
                next.get(from).add(to);
            }
        }

        void edge(int one, int other) {
            arc(one, other);
            arc(other, one);
        }

        PartGraph build() {
            return new PartGraph(this);
        }

        private int add(Vertex vertex) {
            vertices.add(vertex);
            next.add(new LinkedHashSet<>());
            return vertices.size() - 1;
        }
    }

    private PartGraph(Builder builder) {
        vertices = List.copyOf(builder.vertices);
        next =
                builder.next.stream()
                        .map(to -> to.stream().mapToInt(v -> v).toArray())
                        .toArray(int[][]::new);
        for (int v = 0; v < size(); v++) {
            for (int part : vertices.get(v).parts) {
                verticesOf.computeIfAbsent(part, p -> new BitSet()).set(v);
            }
        }
    }

    int size() {
        return next.length;
    }

    int[] next(int vertex) {
        return next[vertex].clone();
    }

    /** Parts to which a vertex belongs; empty for a joint. */
    int[] parts(int vertex) {
        return vertices.get(vertex).parts.clone();
    }

    boolean isJoint(int vertex) {
        return vertices.get(vertex).parts.length == 0;
    }

    /** Every part of the graph. */
    BitSet allParts() {
        BitSet all = new BitSet();
        verticesOf.keySet().forEach(all::set);
        return all;
    }

    /** Parts between the ends of a way, in its order, each once. */
    List<Integer> partsOn(int[] way) {
        Set<Integer> parts = new LinkedHashSet<>();
        for (int i = 1; i < way.length - 1; i++) {
            Arrays.stream(vertices.get(way[i]).parts).forEach(parts::add);
        }
        return List.copyOf(parts);
    }

    /** Every vertex that goes when these parts go. */
    BitSet verticesOf(BitSet gone) {
        BitSet closed = new BitSet(size());
        gone.stream().mapToObj(verticesOf::get).filter(Objects::nonNull).forEach(closed::or);
        return closed;
    }

    /**
     * A shortest way that passes none of the parts that are gone; its ends may belong to any.
     *
     * @return vertices from one end to the other
     */
    Optional<int[]> way(int from, int to, BitSet gone) {
        return wayAround(from, to, verticesOf(gone));
    }

    /** Whether a way asks no lever to stand in two places. */
    boolean isPossible(int[] way) {
        return torn(way).isEmpty();
    }

    /**
     * A shortest possible way that passes none of these vertices.
     *
     * <p>Where the shortest way asks one lever to stand in two places, each of its stands is tried
     * by itself: any possible way is found with one of them.
     */
    Optional<int[]> wayAround(int from, int to, BitSet closed) {
        Optional<int[]> shortest = shortest(from, to, closed);
        OptionalInt torn = shortest.map(this::torn).orElse(OptionalInt.empty());
        if (torn.isEmpty()) {
            return shortest;
        }
        int part = torn.getAsInt();
        for (long stand : standsOf(part)) {
            if (vertices.get(from).allows(part, stand) && vertices.get(to).allows(part, stand)) {
                Optional<int[]> found = wayAround(from, to, closedAt(part, stand, closed));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<int[]> shortest(int from, int to, BitSet closed) {
        int[] before = new int[size()];
        Arrays.fill(before, -1);
        before[from] = from;
        int[] open = new int[size()];
        open[0] = from;
        int found = 1;
        for (int i = 0; i < found && before[to] < 0; i++) {
            for (int v : next[open[i]]) {
                if (before[v] < 0 && (v == to || !closed.get(v))) {
                    before[v] = open[i];
                    open[found++] = v;
                }
            }
        }
        return before[to] < 0 ? Optional.empty() : Optional.of(traced(from, to, before));
    }

    private static int[] traced(int from, int to, int[] before) {
        int length = 1;
        for (int v = to; v != from; v = before[v]) {
            length++;
        }
        int[] way = new int[length];
        int at = to;
        for (int i = length - 1; i >= 0; i--) {
            way[i] = at;
            at = before[at];
        }
        return way;
    }

    /** A part whose lever would have to stand in two places. */
    private OptionalInt torn(int[] way) {
        Map<Integer, Long> stands = new LinkedHashMap<>();
        for (int v : way) {
            Vertex vertex = vertices.get(v);
            if (vertex.stands != ANY_STAND) {
                stands.merge(vertex.parts[0], vertex.stands, (a, b) -> a & b);
            }
        }
        return stands.entrySet().stream()
                .filter(entry -> entry.getValue() == 0)
                .mapToInt(Map.Entry::getKey)
                .findFirst();
    }

    private long[] standsOf(int part) {
        long all =
                vertices.stream()
                        .filter(vertex -> vertex.movesWith(part))
                        .mapToLong(Vertex::stands)
                        .reduce(0, (a, b) -> a | b);
        return BitSet.valueOf(new long[] {all}).stream().mapToLong(bit -> 1L << bit).toArray();
    }

    private BitSet closedAt(int part, long stand, BitSet closed) {
        BitSet more = (BitSet) closed.clone();
        for (int v = 0; v < size(); v++) {
            if (!vertices.get(v).allows(part, stand)) {
                more.set(v);
            }
        }
        return more;
    }
}
