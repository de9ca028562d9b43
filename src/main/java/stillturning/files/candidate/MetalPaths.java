package stillturning.files.candidate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;

/** Looks along a candidate's metal: what no switch position could ever make work. */
final class MetalPaths {

    private record Edge(int to, boolean closedInFlight) {}

    private static final int STRUCTURE = 0;

    private final Candidate candidate;
    private final Assembly assembly;
    private final ProblemCollector report;
    private final Circuit circuit;
    private final List<List<Edge>> onward = new ArrayList<>();
    private final List<List<Edge>> backward = new ArrayList<>();

    MetalPaths(Candidate candidate, Assembly assembly, ProblemCollector report) {
        this.candidate = candidate;
        this.assembly = assembly;
        this.report = report;
        this.circuit = candidate.circuit();
        for (int net = 0; net < circuit.nets(); net++) {
            onward.add(new ArrayList<>());
            backward.add(new ArrayList<>());
        }
        circuit.placed().forEach(this::addEdges);
    }

    private void addEdges(Placed placed) {
        boolean closed = closedInFlight(placed);
        int to = placed.to();
        if (placed.element() instanceof Conversion conversion) {
            to = circuit.net(placed.part(), conversion.output().plus());
        } else if (placed.element().passage() == Element.Passage.NONE) {
            return;
        }
        add(placed.from(), to, closed);
        if (placed.element().passage() == Element.Passage.BOTH_WAYS) {
            add(to, placed.from(), closed);
        }
    }

    private void add(int from, int to, boolean closed) {
        onward.get(from).add(new Edge(to, closed));
        backward.get(to).add(new Edge(from, closed));
    }

    private boolean closedInFlight(Placed placed) {
        String position = candidate.cockpit().flight().getOrDefault(placed.part(), "");
        return placed.element()
                .commandedBy()
                .map(control -> control.closes(position, true))
                .orElse(true);
    }

    /**
     * Tells loads without a way from or back to a source, grounds that lead nowhere, shorted
     * batteries, and sources that are joined backwards.
     *
     * @param fed each fed input with the place of its feed
     */
    void check(Map<Terminal, Spot> fed) {
        BitSet plus = new BitSet();
        BitSet minus = new BitSet();
        for (Placed placed : circuit.placed()) {
            if (placed.element().role().isSource()) {
                plus.set(placed.from());
                minus.set(placed.to());
            }
        }
        if (plus.isEmpty()) {
            report.problem(
                    Spot.atKey("parts"),
                    "there is no battery and no alternator",
                    "add at least one source");
            return;
        }
        feeds(fed, reach(plus, onward, false));
        returns(fed, reach(minus, backward, false));
        grounds();
        shorts();
        backwards();
    }

    private void feeds(Map<Terminal, Spot> fed, BitSet live) {
        fed.forEach(
                (input, spot) -> {
                    if (!live.get(netOf(input))) {
                        report.problem(
                                spot,
                                "no way leads from any source to " + input,
                                "link what this feed starts from to a battery or an alternator");
                    }
                });
    }

    private void returns(Map<Terminal, Spot> fed, BitSet back) {
        Set<String> told = new HashSet<>();
        fed.forEach(
                (input, spot) -> {
                    Terminal minus = new Terminal(input.part(), "minus");
                    if (!back.get(netOf(minus)) && told.add(input.part())) {
                        report.problem(
                                spot,
                                "no way leads back from " + minus + " to any source",
                                "link the ground at which it returns to a battery's minus");
                    }
                });
    }

    /** In an aircraft without metal structure a ground is a place where wires meet, no more. */
    private void grounds() {
        BitSet structure = new BitSet();
        structure.set(STRUCTURE);
        BitSet reached = reach(structure, onward, false);
        if (onward.get(STRUCTURE).isEmpty()) {
            return;
        }
        candidate
                .all(Part.Role.GROUND)
                .filter(g -> !reached.get(circuit.net(g.id(), "stud")))
                .forEach(
                        g ->
                                report.problem(
                                        assembly.spotOf(g.id()),
                                        "the ground does not lead to the structure",
                                        "link its lead to another ground, or write"
                                                + " on-structure: yes"));
    }

    private void shorts() {
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Cell) {
                BitSet plus = new BitSet();
                plus.set(placed.from());
                if (reach(plus, onward, true).get(placed.to())) {
                    report.problem(
                            assembly.spotOf(placed.part()),
                            "metal leads from the battery's plus to its minus, with all levers as in"
                                    + " flight and all contactors closed",
                            "take out the run that joins plus to ground");
                }
            }
        }
    }

    /** A source whose plus is joined to what loads return to, and whose minus is not. */
    private void backwards() {
        BitSet returns = new BitSet();
        candidate.loads().forEach(load -> returns.set(circuit.net(load.id(), "minus")));
        for (Placed placed : circuit.placed()) {
            if (placed.element().role().isSource()
                    && leadsTo(placed.from(), returns)
                    && !leadsTo(placed.to(), returns)) {
                String kind = candidate.part(placed.part()).orElseThrow().kind().word();
                report.problem(
                        assembly.spotOf(placed.part()),
                        "the "
                                + kind
                                + " is joined backwards: its "
                                + placed.element().from()
                                + " leads to where loads return, and its "
                                + placed.element().to()
                                + " does not",
                        "exchange what is joined to the two");
            }
        }
    }

    private boolean leadsTo(int net, BitSet goals) {
        BitSet start = new BitSet();
        start.set(net);
        return reach(start, onward, true).intersects(goals);
    }

    private int netOf(Terminal terminal) {
        return circuit.net(terminal.part(), terminal.name());
    }

    private static BitSet reach(BitSet starts, List<List<Edge>> edges, boolean inFlight) {
        BitSet reached = (BitSet) starts.clone();
        Deque<Integer> open = new ArrayDeque<>();
        starts.stream().forEach(open::add);
        while (!open.isEmpty()) {
            for (Edge edge : edges.get(open.remove())) {
                if ((!inFlight || edge.closedInFlight) && !reached.get(edge.to)) {
                    reached.set(edge.to);
                    open.add(edge.to);
                }
            }
        }
        return reached;
    }
}
