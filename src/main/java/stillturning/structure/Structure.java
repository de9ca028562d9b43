package stillturning.structure;

import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Pseudograph;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Study.Aircraft;

/** Reads a candidate as a graph. */
public final class Structure {
    private Structure() {}

    /** What the graph of a candidate says. */
    public static StructureFindings of(Aircraft aircraft, Candidate candidate) {
        Circuit circuit = candidate.circuit();
        Pseudograph<Integer, DefaultEdge> graph = new Pseudograph<>(DefaultEdge.class);
        for (int net = 0; net < circuit.nets(); net++) {
            graph.addVertex(net);
        }
        for (Placed placed : circuit.placed()) {
            graph.addEdge(placed.from(), placed.to());
        }
        int sets = new ConnectivityInspector<>(graph).connectedSets().size();
        return new StructureFindings(graph.edgeSet().size() - graph.vertexSet().size() + sets);
    }
}
