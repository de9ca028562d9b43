package stillturning.model.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Protector;

/** The ways from each source to the buses next to it. */
public final class MainLines {

    private static final double FIVE_MINUTES = 300;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final int STRUCTURE = 0;

    /**
     * A way from a source to a bus.
     *
     * @param amps current for which it is sized (A): the alternator's limit, the battery's at the
     *     five-minute rate, or less where a protector on the way has a smaller rating
     */
    public record MainLine(String source, String bus, List<Wire> wires, double amps) {
        public MainLine {
            wires = List.copyOf(wires);
        }
    }

    /** A net that is reached, by way of these elements, with so much wire between (ohm). */
    private record Reached(int net, double ohms, List<Placed> way) {}

    private final Candidate candidate;
    private final Circuit circuit;
    private final Map<Integer, List<Placed>> at = new HashMap<>();

    /**
     * @param closed whether a contact lets current through
     */
    public MainLines(Candidate candidate, Circuit circuit, Predicate<Placed> closed) {
        this.candidate = candidate;
        this.circuit = circuit;
        for (Placed placed : circuit.placed()) {
            if (placed.element().passage() != Passage.NONE && closed.test(placed)) {
                at.computeIfAbsent(placed.from(), n -> new ArrayList<>()).add(placed);
                at.computeIfAbsent(placed.to(), n -> new ArrayList<>()).add(placed);
            }
        }
    }

    /** All of them, in the order of the parts. */
    public List<MainLine> all() {
        List<MainLine> mains = new ArrayList<>();
        for (Part part : candidate.parts()) {
            part.elements().stream()
                    .filter(Cell.class::isInstance)
                    .map(Cell.class::cast)
                    .forEach(c -> add(part, c.from(), fiveMinuteAmps(c.capacity()), mains));
            part.elements().stream()
                    .filter(Generator.class::isInstance)
                    .map(Generator.class::cast)
                    .forEach(g -> add(part, g.from(), g.output().largestAmps(), mains));
        }
        return mains;
    }

    /** The current that empties it in five minutes (A), by its own Peukert exponent. */
    public static double fiveMinuteAmps(Capacity capacity) {
        double seconds = capacity.ratedHours() * SECONDS_PER_HOUR;
        return capacity.ratedAmps() * Math.pow(seconds / FIVE_MINUTES, 1 / capacity.exponent());
    }

    private void add(Part source, String terminal, double amps, List<MainLine> mains) {
        for (Reached bus : busesFrom(circuit.net(source.id(), terminal))) {
            double most =
                    bus.way.stream()
                            .map(Placed::element)
                            .filter(Protector.class::isInstance)
                            .mapToDouble(e -> ((Protector) e).ratedAmps())
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
            mains.add(
                    new MainLine(
                            source.id(),
                            nameOf(bus.net),
                            bus.way.stream().flatMap(p -> wire(p).stream()).toList(),
                            Math.min(amps, most)));
        }
    }

    private Optional<Wire> wire(Placed placed) {
        return candidate.wire(placed.part());
    }

    private String nameOf(int bar) {
        return candidate
                .all(Part.Role.BUS)
                .filter(b -> circuit.net(b.id(), b.exit()) == bar)
                .map(Part::id)
                .findFirst()
                .orElseThrow();
    }

    /** Dijkstra's algorithm over the wires' resistance, not beyond the first bus nor a load. */
    private List<Reached> busesFrom(int start) {
        Set<Integer> bars = new HashSet<>();
        candidate.all(Part.Role.BUS).forEach(b -> bars.add(circuit.net(b.id(), b.exit())));
        List<Reached> found = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        PriorityQueue<Reached> open =
                new PriorityQueue<>(
                        Comparator.comparingDouble(Reached::ohms)
                                .thenComparingInt(r -> r.way.size())
                                .thenComparingInt(Reached::net));
        open.add(new Reached(start, 0, List.of()));
        while (!open.isEmpty()) {
            Reached nearest = open.remove();
            if (nearest.net == STRUCTURE || !done.add(nearest.net)) {
                continue;
            }
            if (bars.contains(nearest.net)) {
                found.add(nearest);
                continue;
            }
            at.getOrDefault(nearest.net, List.of()).forEach(p -> onward(nearest, p, open));
        }
        return found;
    }

    private void onward(Reached reached, Placed placed, PriorityQueue<Reached> open) {
        boolean forward = placed.from() == reached.net;
        if (!forward && placed.element().passage() == Passage.ONE_WAY) {
            return;
        }
        List<Placed> way = new ArrayList<>(reached.way);
        way.add(placed);
        open.add(
                new Reached(
                        forward ? placed.to() : placed.from(),
                        reached.ohms + wire(placed).map(Wire::ohms).orElse(0.0),
                        way));
    }
}
