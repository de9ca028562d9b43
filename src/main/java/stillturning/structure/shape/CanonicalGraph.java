package stillturning.structure.shape;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A labelled graph whose vertices have no numbers: equal to another exactly if the vertices of one
 * can be renumbered so that all labels and edges agree.
 */
public final class CanonicalGraph {

    /** The end of an edge that leaves a vertex. */
    record Edge(int to, String label) {}

    private final List<String> labels;
    private final List<List<Edge>> edges;
    private final Colouring refined;

    CanonicalGraph(List<String> labels, List<List<Edge>> edges) {
        this.labels = List.copyOf(labels);
        this.edges = edges.stream().map(List::copyOf).toList();
        this.refined = Colouring.of(this.labels, this.edges);
    }

    /** How many vertices there are. */
    public int vertices() {
        return labels.size();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CanonicalGraph form
                && labels.size() == form.labels.size()
                && renames(form, refined, form.refined);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(refined.sorted());
    }

    /** Whether a renumbering that keeps these colours turns this graph into another. */
    private boolean renames(CanonicalGraph other, Colouring here, Colouring there) {
        if (!Arrays.equals(here.sorted(), there.sorted())) {
            return false;
        }
        int[] open = here.smallestClass();
        if (open.length == 0) {
            return agrees(other, here.partners(there));
        }
        Colouring held = here.holding(open[0]);
        return Arrays.stream(there.classOf(here.colour(open[0])))
                .anyMatch(candidate -> renames(other, held, there.holding(candidate)));
    }

    /** Compares every label and every edge. */
    private boolean agrees(CanonicalGraph other, int[] partner) {
        for (int v = 0; v < partner.length; v++) {
            if (!labels.get(v).equals(other.labels.get(partner[v]))
                    || !renumbered(edges.get(v), partner)
                            .equals(ends(other.edges.get(partner[v])))) {
                return false;
            }
        }
        return true;
    }

    private static Map<String, Integer> renumbered(List<Edge> edges, int[] partner) {
        return ends(edges.stream().map(e -> new Edge(partner[e.to], e.label)).toList());
    }

    private static Map<String, Integer> ends(List<Edge> edges) {
        return ShapeGraph.counted(edges.stream().map(e -> e.to + " " + e.label).toList());
    }
}
