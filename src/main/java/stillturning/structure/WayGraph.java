package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stillturning.parts.Part;
import stillturning.structure.Wiring.GraphLine;

/**
 * The part graph of a candidate's open lines, with one vertex that stands for every source's plus
 * and one for every source's minus.
 */
final class WayGraph {

    private final Wiring wiring;
    private final BitSet open;
    private final PartGraph.Builder builder = new PartGraph.Builder();
    private final int plus;
    private final int minus;
    private final Map<LoadEnds, Ends> ends = new LinkedHashMap<>();
    private final Map<List<LoadEnds>, Ends> endsOfAny = new LinkedHashMap<>();
    private final PartGraph graph;

    /** A load's vertices: its work, its inputs, its return. */
    private record Ends(int work, List<Integer> inputs, int back) {}

    /**
     * @param alternatives loads of which any will do, each with ends of its own
     */
    WayGraph(Wiring wiring, BitSet open, List<LoadEnds> loads, List<List<LoadEnds>> alternatives) {
        this.wiring = wiring;
        this.open = open;
        for (int net = 0; net < wiring.circuit.nets(); net++) {
            builder.vertex(wiring.barsOn(net).stream().mapToInt(part -> part).toArray());
        }
        plus = builder.vertex();
        minus = builder.vertex();
        byPart().forEach(this::addPart);
        loads.forEach(load -> ends.put(load, addEnds(load)));
        alternatives.forEach(any -> endsOfAny.put(any, addEnds(any)));
        graph = builder.build();
    }

    PartGraph graph() {
        return graph;
    }

    int plus() {
        return plus;
    }

    int minus() {
        return minus;
    }

    int work(LoadEnds load) {
        return endsOf(load).work;
    }

    int input(LoadEnds load, int input) {
        return endsOf(load).inputs.get(input);
    }

    int back(LoadEnds load) {
        return endsOf(load).back;
    }

    /** Where a way has come to any of these loads. */
    int work(List<LoadEnds> any) {
        return endsOf(any).work;
    }

    /** Where a way leaves that comes from any of these loads. */
    int back(List<LoadEnds> any) {
        return endsOf(any).back;
    }

    private Ends endsOf(List<LoadEnds> any) {
        Ends found = endsOfAny.get(any);
        if (found == null) {
            throw new IllegalArgumentException("no ends for any of " + any);
        }
        return found;
    }

    private Ends endsOf(LoadEnds load) {
        Ends found = ends.get(load);
        if (found == null) {
            throw new IllegalArgumentException("load " + load.id() + " is not in this graph");
        }
        return found;
    }

    private Map<Integer, List<GraphLine>> byPart() {
        Map<Integer, List<GraphLine>> lines = new LinkedHashMap<>();
        open.stream()
                .mapToObj(wiring.lines::get)
                .forEach(
                        line ->
                                lines.computeIfAbsent(line.part(), p -> new ArrayList<>())
                                        .add(line));
        return lines;
    }

    /** Lines of a part that all meet in one net are one vertex; a load's own belong to nobody. */
    private void addPart(int part, List<GraphLine> lines) {
        boolean isLoad = wiring.parts.get(part).role() == Part.Role.LOAD;
        boolean isStar = !isLoad && hub(lines).isPresent() && haveOneStand(lines);
        int star = isStar ? vertex(lines.get(0)) : -1;
        for (GraphLine line : lines) {
            int vertex = isLoad ? builder.vertex() : isStar ? star : vertex(line);
            connect(line, vertex);
        }
    }

    private void connect(GraphLine line, int vertex) {
        if (line.kind().isSource()) {
            builder.arc(plus, vertex);
            builder.arc(vertex, line.to());
            builder.arc(line.from(), minus);
            return;
        }
        builder.arc(line.from(), vertex);
        builder.arc(vertex, line.to());
        if (line.kind() == Wiring.GraphLineKind.METAL) {
            builder.edge(line.from(), vertex);
            builder.edge(line.to(), vertex);
        }
    }

    private int vertex(GraphLine line) {
        return line.stands() == PartGraph.ANY_STAND
                ? builder.vertex(line.part())
                : builder.vertexAt(line.stands(), line.part());
    }

    /** A net that all lines touch and that is no other bus's bar. */
    private OptionalInt hub(List<GraphLine> lines) {
        GraphLine first = lines.get(0);
        return IntStream.of(first.from(), first.to())
                .filter(
                        net ->
                                lines.stream()
                                        .allMatch(line -> line.from() == net || line.to() == net))
                .filter(net -> wiring.barsOn(net).stream().allMatch(p -> p == first.part()))
                .findFirst();
    }

    private static boolean haveOneStand(List<GraphLine> lines) {
        return lines.stream().mapToLong(GraphLine::stands).distinct().count() == 1
                && lines.stream().noneMatch(line -> line.kind().isSource());
    }

    private Ends addEnds(LoadEnds load) {
        int work = builder.vertex();
        builder.arc(load.work().from(), work);
        List<Integer> inputs = new ArrayList<>();
        for (LoadEnds.Input input : load.inputs()) {
            int vertex = builder.vertex();
            builder.arc(input.net(), vertex);
            inputs.add(vertex);
        }
        int back = builder.vertex();
        builder.arc(back, load.work().to());
        return new Ends(work, inputs, back);
    }

    private Ends addEnds(List<LoadEnds> any) {
        int work = builder.vertex();
        int back = builder.vertex();
        for (LoadEnds load : any) {
            builder.arc(load.work().from(), work);
            builder.arc(back, load.work().to());
        }
        return new Ends(work, List.of(), back);
    }
}
