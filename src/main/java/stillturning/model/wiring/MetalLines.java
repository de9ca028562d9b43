package stillturning.model.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Element.Passage;

/**
 * A candidate's metal as lines: elements one behind the other, with nothing branching off between
 * them, so that the same current flows in all of a line.
 */
public final class MetalLines {

    private static final int STRUCTURE = 0;

    /** One end of an element. */
    private record End(Placed placed, int net) {}

    /**
     * A line.
     *
     * @param links its elements in order, those at its ends included
     */
    public record MetalLine(List<Placed> links) {
        public MetalLine {
            links = List.copyOf(links);
        }

        /** Fuses, breakers and electronic trips in it. */
        public Stream<Placed> protectors() {
            return links.stream().filter(l -> l.element().overload().isPresent());
        }

        /** Whether an element of a part lies in it. */
        public boolean passes(String part) {
            return links.stream().anyMatch(l -> l.part().equals(part));
        }
    }

    private final Candidate candidate;
    private final Circuit circuit;
    private final Map<Integer, List<Placed>> at = new HashMap<>();
    private final Map<String, MetalLine> byWire = new LinkedHashMap<>();

    /** The first line that an element lies in, by the element's name. */
    private final Map<String, MetalLine> byElement = new HashMap<>();

    /** The lines that pass a part. */
    private final Map<String, List<MetalLine>> through = new HashMap<>();

    private final IdentityHashMap<MetalLine, List<Load>> passed = new IdentityHashMap<>();
    private final IdentityHashMap<MetalLine, List<Load>> returning = new IdentityHashMap<>();

    public MetalLines(Candidate candidate, Circuit circuit) {
        this.candidate = candidate;
        this.circuit = circuit;
        for (Placed placed : circuit.placed()) {
            if (placed.from() != placed.to()) {
                at.computeIfAbsent(placed.from(), net -> new ArrayList<>()).add(placed);
                at.computeIfAbsent(placed.to(), net -> new ArrayList<>()).add(placed);
            }
        }
        for (Placed placed : circuit.placed()) {
            if (isWire(placed) && !byWire.containsKey(placed.part())) {
                MetalLine line = along(placed);
                line.links().stream()
                        .filter(this::isWire)
                        .forEach(wire -> byWire.put(wire.part(), line));
                line.links().forEach(link -> byElement.putIfAbsent(link.name(), line));
                line.links().stream()
                        .map(Placed::part)
                        .distinct()
                        .forEach(part -> note(through, part, line));
            }
        }
        candidate.loads().forEach(this::find);
    }

    private void find(Load load) {
        through.getOrDefault(load.id(), List.of()).forEach(line -> note(passed, line, load));
        returnOf(load).ifPresent(line -> note(returning, line, load));
    }

    private static <K, V> void note(Map<K, List<V>> into, K key, V value) {
        into.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }

    private boolean isWire(Placed placed) {
        return candidate.has(placed.part(), Part.Role.WIRE);
    }

    /** The line in which a wire lies. */
    public MetalLine of(String wire) {
        MetalLine line = byWire.get(wire);
        if (line == null) {
            throw new IllegalArgumentException(wire + " is no wire of " + candidate.id());
        }
        return line;
    }

    /** The line in which an element lies, if it has a wire; the first, should there be several. */
    public Optional<MetalLine> through(Placed element) {
        return Optional.ofNullable(byElement.get(element.name()));
    }

    /** The line that supplies an input of a load, if it is one. */
    public Optional<MetalLine> supplyOf(Load load, String input) {
        return arrivingAt(load.id(), circuit.net(load.id(), input));
    }

    /** The lines that supply the inputs of a load, as far as each is one. */
    Stream<MetalLine> suppliesOf(Load load) {
        return load.inputs().stream().flatMap(i -> supplyOf(load, i).stream());
    }

    /** A line, and where it supplies a load or is its return, the other one through that load. */
    Stream<MetalLine> circuitOf(MetalLine line) {
        return Stream.concat(
                Stream.of(line),
                loadsIn(line).stream()
                        .flatMap(
                                load ->
                                        returnOf(load).filter(line::equals).isPresent()
                                                ? suppliesOf(load)
                                                : returnOf(load).stream()));
    }

    /** The line by which a load returns, if it is one. */
    public Optional<MetalLine> returnOf(Load load) {
        int net = circuit.net(load.id(), "minus");
        return net == STRUCTURE ? Optional.empty() : arrivingAt(load.id(), net);
    }

    /** The loads that a line passes. */
    public List<Load> loadsIn(MetalLine line) {
        return passed.getOrDefault(line, List.of());
    }

    /** The loads that return by a line. */
    public List<Load> returningBy(MetalLine line) {
        return returning.getOrDefault(line, List.of());
    }

    /** Wires of a line, in order. */
    public List<Wire> wiresIn(MetalLine line) {
        return line.links().stream()
                .map(link -> candidate.wire(link.part()))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    /** The line that arrives at a net of a part from outside, if just one does and has a wire. */
    Optional<MetalLine> arrivingAt(String part, int net) {
        List<Placed> others =
                at.getOrDefault(net, List.of()).stream()
                        .filter(p -> !p.part().equals(part))
                        .toList();
        return others.size() == 1 ? through(others.get(0)) : Optional.empty();
    }

    private MetalLine along(Placed wire) {
        List<Placed> links = new ArrayList<>();
        walk(new End(wire, wire.from())).forEach(link -> links.add(0, link));
        links.add(wire);
        links.addAll(walk(new End(wire, wire.to())));
        return new MetalLine(links);
    }

    /** What follows behind one end of an element, as long as there is just one way on. */
    private List<Placed> walk(End start) {
        List<Placed> links = new ArrayList<>();
        End end = start;
        Optional<Placed> next = onward(end);
        while (next.isPresent()
                && !links.contains(next.get())
                && !next.get().equals(start.placed)) {
            links.add(next.get());
            if (next.get().element().passage() == Passage.NONE) {
                return links;
            }
            end = new End(next.get(), otherNet(next.get(), end.net));
            next = onward(end);
        }
        return links;
    }

    private Optional<Placed> onward(End end) {
        List<Placed> here = at.getOrDefault(end.net, List.of());
        return end.net == STRUCTURE || here.size() != 2
                ? Optional.empty()
                : here.stream().filter(p -> !p.equals(end.placed)).findFirst();
    }

    private static int otherNet(Placed placed, int net) {
        return placed.from() == net ? placed.to() : placed.from();
    }
}
