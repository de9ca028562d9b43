package stillturning.structure.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A graph with labelled vertices and labelled edges while it is drawn; edges may be parallel. */
public final class ShapeGraph {

    private final List<String> labels = new ArrayList<>();
    private final List<List<CanonicalGraph.Edge>> edges = new ArrayList<>();

    /** A new vertex, by its number. */
    public int vertex(String label) {
        labels.add(label);
        edges.add(new ArrayList<>());
        return labels.size() - 1;
    }

    /**
     * Joins two vertices.
     *
     * @throws IllegalArgumentException if both are one
     */
    public void edge(int one, int other, String label) {
        if (one == other) {
            throw new IllegalArgumentException("an edge from vertex " + one + " to itself");
        }
        edges.get(one).add(new CanonicalGraph.Edge(other, label));
        edges.get(other).add(new CanonicalGraph.Edge(one, label));
    }

    /** What is left once the numbers of the vertices are forgotten. */
    public CanonicalGraph form() {
        return new CanonicalGraph(labels, edges);
    }

    /** How often each thing occurs. */
    static <T extends Comparable<T>> Map<T, Integer> counted(List<T> things) {
        Map<T, Integer> counted = new TreeMap<>();
        things.forEach(thing -> counted.merge(thing, 1, Integer::sum));
        return counted;
    }
}
