package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Undirected graphs whose cuts are known, run through the code that candidates go through. */
record PublishedGraph(String name, int size, List<int[]> edges) {

    /** Zachary (1977), Journal of Anthropological Research 33; public copy of the data. */
    static PublishedGraph karateClub() {
        String lists =
                "1-2,3,4,5,6,7,8,9,11,12,13,14,18,20,22,32; 2-3,4,8,14,18,20,22,31;"
                        + " 3-4,8,9,10,14,28,29,33; 4-8,13,14; 5-7,11; 6-7,11,17; 7-17;"
                        + " 9-31,33,34; 10-34; 14-34; 15-33,34; 16-33,34; 19-33,34; 20-34;"
                        + " 21-33,34; 23-33,34; 24-26,28,30,33,34; 25-26,28,32; 26-32; 27-30,34;"
                        + " 28-34; 29-32,34; 30-33,34; 31-33,34; 32-33,34; 33-34";
        List<int[]> edges = new ArrayList<>();
        for (String list : lists.split("; ", -1)) {
            String[] ends = list.split("-", -1);
            for (String other : ends[1].split(",", -1)) {
                edges.add(edge(Integer.parseInt(ends[0]) - 1, Integer.parseInt(other) - 1));
            }
        }
        return new PublishedGraph("karate club", 34, edges);
    }

    /** Krackhardt (1990), Administrative Science Quarterly 35; public copy of the data. */
    static PublishedGraph kite() {
        return digits("kite", 10, "01 02 03 05 13 14 16 23 25 34 35 36 46 56 57 67 78 89");
    }

    static PublishedGraph petersen() {
        List<int[]> edges = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            edges.add(edge(i, (i + 1) % 5));
            edges.add(edge(5 + i, 5 + (i + 2) % 5));
            edges.add(edge(i, 5 + i));
        }
        return new PublishedGraph("Petersen", 10, edges);
    }

    static PublishedGraph complete(int size) {
        List<int[]> edges = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            for (int j = i + 1; j < size; j++) {
                edges.add(edge(i, j));
            }
        }
        return new PublishedGraph("K" + size, size, edges);
    }

    static PublishedGraph utilities() {
        return digits("K3,3", 6, "03 04 05 13 14 15 23 24 25");
    }

    static PublishedGraph cube(int dimensions) {
        List<int[]> edges = new ArrayList<>();
        for (int v = 0; v < 1 << dimensions; v++) {
            for (int bit = 0; bit < dimensions; bit++) {
                if ((v & 1 << bit) == 0) {
                    edges.add(edge(v, v | 1 << bit));
                }
            }
        }
        return new PublishedGraph("Q" + dimensions, 1 << dimensions, edges);
    }

    static PublishedGraph cycle(int size) {
        return new PublishedGraph(
                "C" + size,
                size,
                IntStream.range(0, size).mapToObj(i -> edge(i, (i + 1) % size)).toList());
    }

    static PublishedGraph path(int size) {
        return new PublishedGraph(
                "P" + size,
                size,
                IntStream.range(0, size - 1).mapToObj(i -> edge(i, i + 1)).toList());
    }

    static PublishedGraph twoQuartets() {
        return digits("two K4", 9, "01 02 03 12 13 23 34 45 56 57 58 67 68 78");
    }

    /** An outer ring of ten, an inner one in steps of two. */
    static PublishedGraph dodecahedron() {
        List<int[]> edges = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            edges.add(edge(i, (i + 1) % 10));
            edges.add(edge(10 + i, 10 + (i + 2) % 10));
            edges.add(edge(i, 10 + i));
        }
        return new PublishedGraph("dodecahedron", 20, edges);
    }

    /** Two rings of five in zigzag, each with a tip. */
    static PublishedGraph icosahedron() {
        List<int[]> edges = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            edges.add(edge(i, (i + 1) % 5));
            edges.add(edge(5 + i, 5 + (i + 1) % 5));
            edges.add(edge(i, 5 + i));
            edges.add(edge(i, 5 + (i + 1) % 5));
            edges.add(edge(i, 10));
            edges.add(edge(5 + i, 11));
        }
        return new PublishedGraph("icosahedron", 12, edges);
    }

    static PublishedGraph heawood() {
        return ringWithChords("Heawood", 14, 5, -5);
    }

    static PublishedGraph frucht() {
        return ringWithChords("Frucht", 12, -5, -2, -4, 2, 5, -2, 2, 5, -2, -5, 4, 2);
    }

    /** A ring, and from each vertex a chord that goes so far along it; each chord counts once. */
    private static PublishedGraph ringWithChords(String name, int size, int... chords) {
        List<int[]> edges = new ArrayList<>(cycle(size).edges());
        for (int i = 0; i < size; i++) {
            int end = Math.floorMod(i + chords[i % chords.length], size);
            if (i < end) {
                edges.add(edge(i, end));
            }
        }
        return new PublishedGraph(name, size, edges);
    }

    /** Source 0, sink 3; Barlow and Proschan (1975), from memory. */
    static PublishedGraph bridge() {
        return digits("bridge", 4, "01 02 12 13 23");
    }

    /** Source 0, sink 5. */
    static PublishedGraph ladder() {
        return digits("ladder", 6, "01 02 12 13 24 34 35 45");
    }

    /** Corners 0 and 8. */
    static PublishedGraph grid() {
        return digits("grid", 9, "01 12 34 45 67 78 03 36 14 47 25 58");
    }

    /** Every vertex a part, every edge a joint. */
    PartGraph verticesAreParts() {
        PartGraph.Builder builder = new PartGraph.Builder();
        IntStream.range(0, size).forEach(builder::vertex);
        edges.forEach(e -> builder.edge(e[0], e[1]));
        return builder.build();
    }

    /** Every edge a part, every vertex a joint. */
    PartGraph edgesAreParts() {
        PartGraph.Builder builder = new PartGraph.Builder();
        IntStream.range(0, size).forEach(v -> builder.vertex());
        for (int i = 0; i < edges.size(); i++) {
            int middle = builder.vertex(i);
            builder.edge(edges.get(i)[0], middle);
            builder.edge(middle, edges.get(i)[1]);
        }
        return builder.build();
    }

    boolean areJoined(int one, int other) {
        return edges.stream()
                .anyMatch(
                        e ->
                                Arrays.equals(e, edge(one, other))
                                        || Arrays.equals(e, edge(other, one)));
    }

    @Override
    public String toString() {
        return name;
    }

    private static PublishedGraph digits(String name, int size, String pairs) {
        return new PublishedGraph(
                name,
                size,
                Arrays.stream(pairs.split(" ", -1))
                        .map(pair -> edge(pair.charAt(0) - '0', pair.charAt(1) - '0'))
                        .toList());
    }

    private static int[] edge(int one, int other) {
        return new int[] {one, other};
    }
}
