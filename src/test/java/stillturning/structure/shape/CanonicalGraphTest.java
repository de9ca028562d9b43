package stillturning.structure.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The form of a graph against every renumbering of it. */
class CanonicalGraphTest {

    private record Edge(int one, int other, String label) {}

    private record Drawn(List<String> labels, List<Edge> edges) {
        CanonicalGraph form() {
            ShapeGraph graph = new ShapeGraph();
            labels.forEach(graph::vertex);
            edges.forEach(e -> graph.edge(e.one, e.other, e.label));
            return graph.form();
        }

        /** The same graph with vertex v under the number that the order gives it. */
        Drawn renumbered(List<Integer> order) {
            List<String> moved = new ArrayList<>(labels);
            IntStream.range(0, labels.size()).forEach(v -> moved.set(order.get(v), labels.get(v)));
            List<Edge> joined = new ArrayList<>();
            edges.forEach(e -> joined.add(new Edge(order.get(e.other), order.get(e.one), e.label)));
            return new Drawn(moved, joined);
        }

        /** Labels and edges written down in full, so that two of them are compared as texts. */
        String written() {
            List<String> all = new ArrayList<>();
            edges.forEach(
                    e ->
                            all.add(
                                    Math.min(e.one, e.other)
                                            + "-"
                                            + Math.max(e.one, e.other)
                                            + e.label));
            Collections.sort(all);
            return labels + " " + all;
        }

        boolean isByTryingAll(Drawn other) {
            return orders(labels.size()).stream()
                    .anyMatch(order -> renumbered(order).written().equals(other.written()));
        }
    }

    private static List<List<Integer>> orders(int n) {
        if (n == 0) {
            return List.of(List.of());
        }
        List<List<Integer>> all = new ArrayList<>();
        for (List<Integer> shorter : orders(n - 1)) {
            for (int at = 0; at <= shorter.size(); at++) {
                List<Integer> longer = new ArrayList<>(shorter);
                longer.add(at, n - 1);
                all.add(longer);
            }
        }
        return all;
    }

    private static Drawn random(Random random, int vertices, int edges) {
        List<String> labels =
                IntStream.range(0, vertices)
                        .mapToObj(v -> random.nextInt(3) == 0 ? "bus" : "wire")
                        .toList();
        List<Edge> joined = new ArrayList<>();
        while (joined.size() < edges) {
            int one = random.nextInt(vertices);
            int other = random.nextInt(vertices);
            if (one != other) {
                joined.add(new Edge(one, other, random.nextInt(4) == 0 ? "in" : "out"));
            }
        }
        return new Drawn(labels, joined);
    }

    @Test
    void randomGraphsAreEqualExactlyIfSomeRenumberingMakesThemSo() {
        Random random = new Random(1);
        int equal = 0;
        for (int round = 0; round < 40; round++) {
            int vertices = 3 + round % 3;
            int edges = 2 + round % 4;
            List<Drawn> company =
                    IntStream.range(0, 9).mapToObj(n -> random(random, vertices, edges)).toList();
            for (Drawn one : company) {
                for (Drawn other : company) {
                    boolean same = one.isByTryingAll(other);
                    assertEquals(
                            same,
                            one.form().equals(other.form()),
                            () -> one.written() + " and " + other.written());
                    equal += same ? 1 : 0;
                }
            }
        }
        assertTrue(equal > 400, equal + " equal pairs");
    }

    @Test
    void renumberingChangesNothing() {
        Random random = new Random(2);
        for (int round = 0; round < 200; round++) {
            Drawn drawn = random(random, 30, 45);
            List<Integer> order = new ArrayList<>(IntStream.range(0, 30).boxed().toList());
            Collections.shuffle(order, random);
            CanonicalGraph form = drawn.form();
            CanonicalGraph again = drawn.renumbered(order).form();
            assertEquals(form, again);
            assertEquals(form.hashCode(), again.hashCode());
        }
    }

    @Test
    void allGraphsOfFourVerticesWithoutLabelsComeToElevenForms() {
        // simple graphs on 4 vertices: 11, OEIS A000088 (from memory)
        List<Edge> possible = new ArrayList<>();
        for (int one = 0; one < 4; one++) {
            for (int other = one + 1; other < 4; other++) {
                possible.add(new Edge(one, other, ""));
            }
        }
        Set<CanonicalGraph> forms = new HashSet<>();
        for (int set = 0; set < 1 << possible.size(); set++) {
            int chosen = set;
            List<Edge> edges =
                    IntStream.range(0, possible.size())
                            .filter(e -> (chosen >> e & 1) == 1)
                            .mapToObj(possible::get)
                            .toList();
            forms.add(new Drawn(List.of("", "", "", ""), edges).form());
        }
        assertEquals(11, forms.size());
    }

    @Test
    void aRingOfSixIsNotTwoRingsOfThreeThoughEveryVertexLooksAlike() {
        CanonicalGraph six = rings(6).form();
        CanonicalGraph threes = rings(3, 3).form();
        assertEquals(six.hashCode(), threes.hashCode());
        assertNotEquals(six, threes);
        assertEquals(rings(5, 5, 4).form(), rings(4, 5, 5).form());
        assertNotEquals(rings(5, 5, 4).form(), rings(7, 7).form());
    }

    private static Drawn rings(int... sizes) {
        List<String> labels = new ArrayList<>();
        List<Edge> edges = new ArrayList<>();
        for (int size : sizes) {
            int first = labels.size();
            for (int v = 0; v < size; v++) {
                labels.add("");
                edges.add(new Edge(first + v, first + (v + 1) % size, ""));
            }
        }
        return new Drawn(labels, edges);
    }

    @Test
    void manyAlikeBranchesAreComparedInAMoment() {
        List<String> labels = new ArrayList<>(List.of("bus"));
        List<Edge> edges = new ArrayList<>();
        for (int branch = 0; branch < 40; branch++) {
            int first = labels.size();
            labels.addAll(List.of("breaker", "wire", "load"));
            edges.add(new Edge(0, first, "out"));
            edges.add(new Edge(first, first + 1, "a"));
            edges.add(new Edge(first + 1, first + 2, "b"));
        }
        Drawn drawn = new Drawn(labels, edges);
        List<Integer> order = new ArrayList<>(IntStream.range(0, 121).boxed().toList());
        Collections.shuffle(order, new Random(3));
        assertEquals(drawn.form(), drawn.renumbered(order).form());
    }

    @Test
    void anEdgeNeedsTwoVertices() {
        ShapeGraph graph = new ShapeGraph();
        int only = graph.vertex("bus");
        assertThrows(IllegalArgumentException.class, () -> graph.edge(only, only, "loop"));
    }
}
