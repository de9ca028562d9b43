package stillturning.structure.shape;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A colour for each vertex of a graph, refined until neighbours split it no further. It hangs on
 * labels and edges alone, not on the order of the vertices.
 */
final class Colouring {

    private static final int[] NONE = {};

    private final int[][] ends;
    private final long[][] edgeColours;
    private final long[] colours;
    private final long[] sorted;

    private Colouring(int[][] ends, long[][] edgeColours, long[] start) {
        this.ends = ends;
        this.edgeColours = edgeColours;
        this.colours = refined(start);
        this.sorted = colours.clone();
        Arrays.sort(sorted);
    }

    static Colouring of(List<String> labels, List<List<CanonicalGraph.Edge>> edges) {
        Map<String, Long> known = new HashMap<>();
        int[][] ends = new int[labels.size()][];
        long[][] edgeColours = new long[labels.size()][];
        long[] start = new long[labels.size()];
        for (int v = 0; v < ends.length; v++) {
            List<CanonicalGraph.Edge> own = edges.get(v);
            start[v] = known.computeIfAbsent(labels.get(v), Colouring::colour);
            ends[v] = own.stream().mapToInt(CanonicalGraph.Edge::to).toArray();
            edgeColours[v] =
                    own.stream()
                            .mapToLong(e -> known.computeIfAbsent(e.label(), Colouring::colour))
                            .toArray();
        }
        return new Colouring(ends, edgeColours, start);
    }

    /** The same graph, one vertex told from all others. */
    Colouring holding(int vertex) {
        long[] start = colours.clone();
        start[vertex] = mixed(start[vertex] + 1);
        return new Colouring(ends, edgeColours, start);
    }

    long colour(int vertex) {
        return colours[vertex];
    }

    /** The colours of all vertices in order. */
    long[] sorted() {
        return sorted;
    }

    /** Vertices of one colour. */
    int[] classOf(long colour) {
        return IntStream.range(0, colours.length).filter(v -> colours[v] == colour).toArray();
    }

    /** The fewest vertices that share a colour, at least two; none where no colour is shared. */
    int[] smallestClass() {
        long smallest = 0;
        int size = Integer.MAX_VALUE;
        int from = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[from]) {
                if (i - from > 1 && i - from < size) {
                    size = i - from;
                    smallest = sorted[from];
                }
                from = i;
            }
        }
        return size == Integer.MAX_VALUE ? NONE : classOf(smallest);
    }

    /** The vertex of the same colour in another graph, where no colour is shared. */
    int[] partners(Colouring other) {
        Map<Long, Integer> there = new HashMap<>();
        IntStream.range(0, other.colours.length).forEach(v -> there.put(other.colours[v], v));
        return Arrays.stream(colours).mapToInt(there::get).toArray();
    }

    private long[] refined(long[] start) {
        long[] now = start;
        int classes = 0;
        int before = -1;
        while (classes > before) {
            before = classes;
            now = round(now);
            classes = (int) Arrays.stream(now).distinct().count();
        }
        return now;
    }

    private long[] round(long[] now) {
        long[] next = new long[now.length];
        for (int v = 0; v < now.length; v++) {
            long sum = 0;
            for (int e = 0; e < ends[v].length; e++) {
                sum += mixed(edgeColours[v][e] ^ mixed(now[ends[v][e]]));
            }
            next[v] = mixed(31 * now[v] + mixed(sum));
        }
        return next;
    }

    private static long colour(String label) {
        long colour = label.length();
        for (int i = 0; i < label.length(); i++) {
            colour = mixed(colour + label.charAt(i));
        }
        return colour;
    }

    /** Spreads a number over all bits: the last steps of the splitmix generator. */
    private static long mixed(long number) {
        long spread = number + 0x9E3779B97F4A7C15L;
        spread = (spread ^ (spread >>> 30)) * 0xBF58476D1CE4E5B9L;
        spread = (spread ^ (spread >>> 27)) * 0x94D049BB133111EBL;
        return spread ^ (spread >>> 31);
    }
}
