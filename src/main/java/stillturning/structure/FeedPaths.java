package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.structure.Wiring.GraphLine;

/** Feeds and returns of the engine's loads, part by part. */
final class FeedPaths {

    static final String RETURN = "minus";

    private final Wiring wiring;
    private final WayGraph graph;
    private final BitSet sources = new BitSet();

    /** A way from one source. */
    record FromSource(int source, List<Integer> parts) {}

    /**
     * One side of a load's supply.
     *
     * @param number of the input; -1 for the return
     * @param ways a shortest way from each source that reaches it
     */
    record SupplySide(LoadEnds load, String terminal, int number, List<FromSource> ways) {
        boolean isReturn() {
            return number < 0;
        }

        /** Parts on any of its ways that are in a place, in their order. */
        List<Integer> in(BitSet place) {
            Set<Integer> parts = new LinkedHashSet<>();
            ways.forEach(way -> way.parts().stream().filter(place::get).forEach(parts::add));
            return List.copyOf(parts);
        }
    }

    FeedPaths(Wiring wiring, List<LoadEnds> loads) {
        BitSet open = new Survival(wiring).without(Survival.NOTHING_GONE).open();
        this.wiring = wiring;
        this.graph = new WayGraph(wiring, open, loads, List.of());
        open.stream()
                .mapToObj(wiring.lines::get)
                .filter(line -> line.kind().isSource())
                .map(GraphLine::part)
                .forEach(sources::set);
    }

    /** Inputs of a load in their order, each with its ways. */
    List<SupplySide> feeds(LoadEnds load) {
        List<SupplySide> feeds = new ArrayList<>();
        for (int i = 0; i < load.inputs().size(); i++) {
            List<FromSource> ways = new ArrayList<>();
            for (int source : sources.stream().toArray()) {
                BitSet others = (BitSet) sources.clone();
                others.clear(source);
                graph.graph()
                        .way(graph.plus(), graph.input(load, i), others)
                        .map(way -> new FromSource(source, graph.graph().partsOn(way)))
                        .ifPresent(ways::add);
            }
            feeds.add(new SupplySide(load, load.inputs().get(i).name(), i, ways));
        }
        return feeds;
    }

    /** A load's return, with a shortest way to any source. */
    SupplySide back(LoadEnds load) {
        Optional<int[]> way =
                graph.graph().way(graph.back(load), graph.minus(), Survival.NOTHING_GONE);
        List<FromSource> ways =
                way.map(w -> new FromSource(Survival.NONE, graph.graph().partsOn(w))).stream()
                        .toList();
        return new SupplySide(load, RETURN, -1, ways);
    }

    /** Whether a side has a way without these parts. */
    boolean hasWayWithout(SupplySide side, BitSet gone) {
        return side.isReturn()
                ? graph.graph().way(graph.back(side.load()), graph.minus(), gone).isPresent()
                : graph.graph()
                        .way(graph.plus(), graph.input(side.load(), side.number()), gone)
                        .isPresent();
    }

    List<String> ids(List<Integer> parts) {
        return parts.stream().map(wiring::id).toList();
    }
}
