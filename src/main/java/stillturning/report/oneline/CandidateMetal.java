package stillturning.report.oneline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;

/** Which nets of a candidate hang together, which are grounds, and which way current goes. */
public final class CandidateMetal {

    /** Enough for the smoothest potentials to settle in order, on nets by the hundred. */
    private static final int SWEEPS = 2000;

    private final Candidate candidate;
    private final Circuit circuit;
    private final List<Way> ways = new ArrayList<>();
    private final Map<Integer, Part> groundOf = new LinkedHashMap<>();
    private final double[] potential;
    private final Set<String> pulledIn;

    /** A way for current through a part. */
    private record Way(Part part, Element element, int from, int to) {
        boolean oneWay() {
            return element.passage() == Passage.ONE_WAY;
        }
    }

    /** That of a candidate with nothing wrong. */
    public CandidateMetal(Candidate candidate) {
        this.candidate = candidate;
        circuit = candidate.circuit();
        for (Placed placed : circuit.placed()) {
            candidate
                    .part(placed.part())
                    .filter(part -> carries(part, placed.element()))
                    .ifPresent(part -> ways.add(way(part, placed)));
        }
        nameGrounds();
        potential = potentials();
        pulledIn = pulledIn();
    }

    private static boolean carries(Part part, Element element) {
        boolean inside = part.role() == Part.Role.LOAD || part.role() == Part.Role.GROUND;
        return element instanceof Conversion || (element.passage() != Passage.NONE && !inside);
    }

    /** A conversion lies over its input; its current comes out at its output. */
    private Way way(Part part, Placed placed) {
        Element element = placed.element();
        return new Way(part, element, placed.from(), net(part, element.outlet()));
    }

    int net(Part part, String terminal) {
        return circuit.net(part.id(), terminal);
    }

    int nets() {
        return circuit.nets();
    }

    boolean ground(int net) {
        return net == 0 || groundOf.containsKey(net);
    }

    /** What the ground point is called at which this net ends. */
    String groundName(int net) {
        return groundAt(net).map(ground -> ground.tag().label()).orElse("structure");
    }

    /** The ground point at which this net ends. */
    Optional<Part> groundAt(int net) {
        return Optional.ofNullable(groundOf.get(net));
    }

    /** The wire by which this net reaches its ground; empty where it is bolted to it. */
    Optional<Wire> wireToGround(int net) {
        boolean bolted =
                net == 0
                        || candidate
                                .all(Part.Role.GROUND)
                                .anyMatch(
                                        point ->
                                                point.terminals().stream()
                                                        .anyMatch(t -> net(point, t) == net));
        return bolted
                ? Optional.empty()
                : candidate
                        .wires()
                        .filter(w -> net(w, "a") == net || net(w, "b") == net)
                        .findFirst();
    }

    /** Higher nearer the sources, lower nearer the loads. */
    double potential(int net) {
        return potential[net];
    }

    /**
     * Whether an element of a part is closed in normal flight: a contact, or what a lever moves.
     */
    public boolean closedInFlight(Part part, String element) {
        Optional<Lever> lever =
                part.levers().stream()
                        .filter(l -> l.element().filter(element::equals).isPresent())
                        .findFirst();
        boolean opened =
                lever.filter(l -> !l.positions().get(0).equals(position(l.name(), l.usual())))
                        .isPresent();
        return !opened
                && part.elements().stream()
                        .filter(e -> e.name().equals(element))
                        .allMatch(e -> closed(part, e, pulledIn));
    }

    private String position(String lever, String usual) {
        return candidate.cockpit().flight().getOrDefault(lever, usual);
    }

    /** The wire that a net joins to one other terminal and to nothing else. */
    Optional<Wire> onlyWireAt(int net) {
        List<Part> parts =
                candidate.parts().stream()
                        .filter(p -> p.terminals().stream().anyMatch(t -> net(p, t) == net))
                        .toList();
        return parts.size() == 2 && !ground(net)
                ? parts.stream()
                        .filter(Wire.class::isInstance)
                        .map(Wire.class::cast)
                        .filter(w -> !ground(net(w, "a")) && !ground(net(w, "b")))
                        .findFirst()
                : Optional.empty();
    }

    /** Whether only wires lie between a part's contacts and the coil that moves them. */
    boolean feedsItsOwnCoil(Part part) {
        return coils(part)
                .anyMatch(
                        coil -> {
                            BitSet joined =
                                    reached(
                                            List.of(net(part, coil.from())),
                                            way -> way.part instanceof Wire);
                            return contacts(part, coil)
                                    .anyMatch(
                                            c ->
                                                    joined.get(net(part, c.from()))
                                                            || joined.get(net(part, c.to())));
                        });
    }

    /** Coils that move contacts. */
    private static Stream<Coil> coils(Part part) {
        return part.elements().stream()
                .filter(Coil.class::isInstance)
                .map(Coil.class::cast)
                .filter(coil -> contacts(part, coil).findAny().isPresent());
    }

    private static Stream<Contact> contacts(Part part, Coil coil) {
        return part.elements().stream()
                .filter(Contact.class::isInstance)
                .map(Contact.class::cast)
                .filter(
                        c ->
                                c.control() instanceof Control.ByCoil by
                                        && by.coil().equals(coil.name()));
    }

    /** Ground nets are those that a ground point's terminals or wires alone lead to. */
    private void nameGrounds() {
        candidate
                .all(Part.Role.GROUND)
                .forEach(
                        point -> {
                            for (String terminal : point.terminals()) {
                                groundOf.putIfAbsent(net(point, terminal), point);
                            }
                        });
        Deque<Integer> open = new ArrayDeque<>(groundOf.keySet());
        while (!open.isEmpty()) {
            int net = open.remove();
            Part point = groundOf.get(net);
            for (Way way : ways) {
                if (way.part instanceof Wire && (way.from == net || way.to == net)) {
                    int other = way.from == net ? way.to : way.from;
                    if (!ground(other)) {
                        groundOf.put(other, point);
                        open.add(other);
                    }
                }
            }
        }
    }

    /**
     * Sources and grounds at one, loads and coils at nothing, and everything between a plain
     * resistance.
     */
    private double[] potentials() {
        double[] values = new double[circuit.nets()];
        BitSet held = new BitSet();
        for (int net = 0; net < values.length; net++) {
            values[net] = ground(net) ? 1 : 0.5;
            held.set(net, ground(net));
        }
        sourceNets().forEach(net -> hold(values, held, net, 1));
        for (Part part : candidate.parts()) {
            if (!feedsItsOwnCoil(part)) {
                part.inputs().forEach(input -> hold(values, held, net(part, input), 0));
            }
            coils(part).forEach(coil -> hold(values, held, net(part, coil.to()), 0));
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            relax(values, held);
        }
        return values;
    }

    private static void hold(double[] values, BitSet held, int net, double value) {
        if (!held.get(net)) {
            values[net] = value;
            held.set(net);
        }
    }

    private void relax(double[] values, BitSet held) {
        double[] sums = new double[values.length];
        int[] counts = new int[values.length];
        for (Way way : ways) {
            sums[way.from] += values[way.to];
            counts[way.from]++;
            sums[way.to] += values[way.from];
            counts[way.to]++;
        }
        for (int net = 0; net < values.length; net++) {
            if (!held.get(net) && counts[net] > 0) {
                values[net] = sums[net] / counts[net];
            }
        }
    }

    private List<Integer> sourceNets() {
        return candidate.parts().stream()
                .flatMap(part -> part.sourceTerminals().stream().map(t -> net(part, t)))
                .toList();
    }

    private BitSet reached(List<Integer> from, Predicate<Way> passes) {
        BitSet seen = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(from);
        from.forEach(seen::set);
        while (!open.isEmpty()) {
            int net = open.remove();
            for (Way way : ways) {
                int next =
                        way.from == net ? way.to : way.to == net && !way.oneWay() ? way.from : -1;
                if (next >= 0 && !seen.get(next) && passes.test(way)) {
                    seen.set(next);
                    open.add(next);
                }
            }
        }
        return seen;
    }

    /** Parts whose coil is fed in normal flight. */
    private Set<String> pulledIn() {
        Set<String> pulled = new HashSet<>();
        boolean changed = true;
        while (changed) {
            Set<String> before = Set.copyOf(pulled);
            Predicate<Way> passes = way -> closed(way.part, way.element, before);
            BitSet live = reached(sourceNets(), passes);
            BitSet grounded = reached(List.copyOf(groundOf.keySet()), passes);
            candidate.parts().stream()
                    .filter(
                            part ->
                                    coils(part)
                                            .anyMatch(
                                                    c ->
                                                            live.get(net(part, c.from()))
                                                                    && grounded.get(
                                                                            net(part, c.to()))))
                    .forEach(part -> pulled.add(part.id()));
            changed = pulled.size() > before.size();
        }
        return Set.copyOf(pulled);
    }

    private boolean closed(Part part, Element element, Set<String> pulled) {
        return element.commandedBy()
                .map(
                        control ->
                                control.closes(
                                        position(part.id(), "off"), pulled.contains(part.id())))
                .orElse(true);
    }
}
