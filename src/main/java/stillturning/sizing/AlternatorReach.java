package stillturning.sizing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.traverse.BreadthFirstIterator;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Part;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Element.Role;
import stillturning.story.SteadyState;

/**
 * What alternators have to do with a battery in a state of the flight. They charge one that current
 * reaches from their outputs by metal, through diodes one way. They relieve one of which current
 * flows to where they feed, or the other way round: what it gives there, a larger alternator would
 * give. The diodes by which a load chooses among its inputs join nothing: one input relieves the
 * other of that load alone, and charges nothing. Neither does the structure, since everything
 * returns there.
 */
final class AlternatorReach {

    private static final int STRUCTURE = 0;

    /** Less than this is the leak of an open contact (A). */
    private static final double LEAK_AMPS = 1e-9;

    /** Less than this is the leak of a diode that blocks (A). */
    private static final double BLOCKED_AMPS = 1e-3;

    private final Set<Integer> relieved;
    private final Set<Integer> charged;

    AlternatorReach(Candidate candidate, Circuit circuit, SteadyState flow) {
        List<Placed> outside =
                circuit.placed().stream()
                        .filter(placed -> !candidate.has(placed.part(), Part.Role.LOAD))
                        .filter(placed -> closed(placed, flow))
                        .toList();
        List<Integer> outputs =
                circuit.placed().stream()
                        .filter(placed -> placed.element().role() == Role.GENERATOR)
                        .map(Placed::from)
                        .toList();
        charged = charged(ways(circuit, outside), outputs);
        List<Placed> flowing = outside.stream().filter(placed -> !blocks(placed, flow)).toList();
        relieved = relieved(ways(circuit, flowing), outputs);
    }

    private static Set<Integer> charged(Graph<Integer, DefaultEdge> ways, List<Integer> outputs) {
        Set<Integer> reached = new HashSet<>();
        outputs.forEach(o -> new BreadthFirstIterator<>(ways, o).forEachRemaining(reached::add));
        return reached;
    }

    private static Set<Integer> relieved(Graph<Integer, DefaultEdge> ways, List<Integer> outputs) {
        ConnectivityInspector<Integer, DefaultEdge> groups = new ConnectivityInspector<>(ways);
        return outputs.stream()
                .flatMap(output -> groups.connectedSetOf(output).stream())
                .collect(Collectors.toSet());
    }

    private static Graph<Integer, DefaultEdge> ways(Circuit circuit, List<Placed> through) {
        Graph<Integer, DefaultEdge> ways = new DefaultDirectedGraph<>(DefaultEdge.class);
        IntStream.range(0, circuit.nets()).forEach(ways::addVertex);
        for (Placed placed : through) {
            if (placed.element() instanceof Conversion conversion) {
                way(ways, placed.from(), circuit.net(placed.part(), conversion.output().plus()));
            } else {
                pass(ways, placed);
            }
        }
        return ways;
    }

    private static void pass(Graph<Integer, DefaultEdge> ways, Placed placed) {
        if (placed.element().passage() != Passage.NONE) {
            way(ways, placed.from(), placed.to());
        }
        if (placed.element().passage() == Passage.BOTH_WAYS) {
            way(ways, placed.to(), placed.from());
        }
    }

    private static void way(Graph<Integer, DefaultEdge> ways, int one, int other) {
        if (one != STRUCTURE && other != STRUCTURE && one != other) {
            ways.addEdge(one, other);
        }
    }

    private static boolean closed(Placed placed, SteadyState flow) {
        return placed.element().commandedBy().isEmpty()
                || Math.abs(flow.amps(placed.part(), placed.element().name())) > LEAK_AMPS;
    }

    private static boolean blocks(Placed placed, SteadyState flow) {
        return placed.element().passage() == Passage.ONE_WAY
                && flow.amps(placed.part(), placed.element().name()) < BLOCKED_AMPS;
    }

    /** Whether a larger alternator would relieve a battery. */
    boolean relieves(Placed battery) {
        return relieved.contains(battery.from());
    }

    /** Whether an alternator charges a battery where its voltage is high enough. */
    boolean charges(Placed battery) {
        return charged.contains(battery.from());
    }
}
