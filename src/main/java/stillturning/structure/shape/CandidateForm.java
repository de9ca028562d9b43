package stillturning.structure.shape;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.parts.Lever;
import stillturning.parts.Load;
import stillturning.parts.Part;

/** Draws a candidate as a graph of parts, nets, signs and procedures, without its names. */
public final class CandidateForm {

    private static final String INPUT = "input";

    private final Candidate candidate;
    private final Circuit circuit;
    private final ShapeGraph graph = new ShapeGraph();
    private final Map<String, Integer> parts = new HashMap<>();
    private final Map<Integer, Integer> nets = new HashMap<>();
    private final Map<String, Integer> cues = new HashMap<>();

    private CandidateForm(Candidate candidate) {
        this.candidate = candidate;
        this.circuit = candidate.circuit();
    }

    /** What of a candidate does not hang on its names, its title or the order of its parts. */
    public static CanonicalGraph of(Candidate candidate) {
        return new CandidateForm(candidate).form();
    }

    private CanonicalGraph form() {
        candidate.parts().forEach(part -> parts.put(part.id(), graph.vertex(label(part))));
        candidate.parts().forEach(this::join);
        candidate.cockpit().cues().forEach(this::draw);
        List<Procedure> procedures = candidate.cockpit().procedures();
        for (int n = 0; n < procedures.size(); n++) {
            draw(procedures.get(n), n);
        }
        drawMoves("master-off", candidate.cockpit().masterOff());
        drawMoves("starting", candidate.cockpit().starting());
        return graph.form();
    }

    /** All that is to be known of a part but its name and what people call it. */
    private String label(Part part) {
        String own =
                part.toString()
                        .replace(
                                part.tag().toString(),
                                part.tag().zone() + " " + part.tag().burden());
        StringBuilder label = new StringBuilder(own);
        if (part.role() == Part.Role.LOAD) {
            label.append(" named ").append(part.id());
        }
        Cockpit cockpit = candidate.cockpit();
        for (Lever lever : part.levers()) {
            label.append(" stands ")
                    .append(cockpit.flight().getOrDefault(lever.name(), lever.usual()))
                    .append(" in reach of ")
                    .append(cockpit.reachOf(lever.name()));
        }
        return label.toString();
    }

    private void join(Part part) {
        List<String> alike = part instanceof Load load ? load.inputs() : List.of();
        for (String terminal : part.terminals()) {
            circuit.find(part.id(), terminal)
                    .ifPresent(
                            net ->
                                    graph.edge(
                                            vertex(part.id()),
                                            nets.computeIfAbsent(net, n -> graph.vertex("net")),
                                            alike.contains(terminal) ? INPUT : terminal));
        }
    }

    private int vertex(String part) {
        return parts.computeIfAbsent(part, name -> graph.vertex("none of the parts"));
    }

    private void draw(Cue cue) {
        int vertex = cue.sign().accept(new SignLabel());
        cues.put(cue.name(), vertex);
        cue.shownBy().ifPresent(by -> graph.edge(vertex, vertex(by), "shown by"));
    }

    private void draw(Procedure procedure, int place) {
        int vertex =
                graph.vertex(
                        "procedure %d after %s s, each %s s, starter %s, sheds %s"
                                .formatted(
                                        place,
                                        procedure.responseSeconds(),
                                        procedure.execution().eachSeconds(),
                                        procedure.execution().pressesStarter(),
                                        procedure.sheds()));
        procedure
                .when()
                .forEach(
                        cue ->
                                Optional.ofNullable(cues.get(cue))
                                        .ifPresent(seen -> graph.edge(vertex, seen, "when")));
        procedure
                .execution()
                .automatic()
                .ifPresent(by -> graph.edge(vertex, vertex(by), "done by"));
        drawMoves(vertex, procedure.moves());
    }

    private void drawMoves(String what, Map<String, String> moves) {
        drawMoves(graph.vertex(what), moves);
    }

    private void drawMoves(int vertex, Map<String, String> moves) {
        int place = 0;
        for (Map.Entry<String, String> move : moves.entrySet()) {
            place++;
            String to = place + " to " + move.getValue();
            for (Part part : candidate.parts()) {
                List<String> levers = part.levers().stream().map(Lever::name).toList();
                int lever = levers.indexOf(move.getKey());
                if (lever >= 0) {
                    graph.edge(vertex, vertex(part.id()), "lever " + lever + " as number " + to);
                }
            }
        }
    }

    /** A sign's vertex, joined to what it watches. */
    private final class SignLabel implements Cue.Visitor<Integer> {
        @Override
        public Integer visit(Cue.LowVolts low) {
            return at(low.at(), "below %s V for %s s".formatted(low.volts(), low.seconds()));
        }

        @Override
        public Integer visit(Cue.HighVolts high) {
            return at(high.at(), "above %s V for %s s".formatted(high.volts(), high.seconds()));
        }

        @Override
        public Integer visit(Cue.AlternatorOut out) {
            return watching(out.alternator(), "no output");
        }

        @Override
        public Integer visit(Cue.LoadStops stops) {
            return watching(stops.load(), "stops");
        }

        @Override
        public Integer visit(Cue.EngineStops stops) {
            return graph.vertex("engine stops");
        }

        private int watching(String part, String label) {
            int vertex = graph.vertex(label);
            graph.edge(vertex, vertex(part), "watches");
            return vertex;
        }

        private int at(Terminal terminal, String label) {
            int vertex = graph.vertex(label);
            circuit.find(terminal.part(), terminal.name())
                    .map(net -> nets.computeIfAbsent(net, n -> graph.vertex("net")))
                    .ifPresent(net -> graph.edge(vertex, net, "watches"));
            return vertex;
        }
    }
}
