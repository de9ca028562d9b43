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
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Alternator;
import stillturning.parts.Battery;
import stillturning.parts.Contactor;
import stillturning.parts.DcConverter;
import stillturning.parts.GroundPoint;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;

/** Which nets of a candidate hang together, which are grounds, and which way current goes. */
final class CandidateMetal {

    /** Enough for the smoothest potentials to settle in order, on nets by the hundred. */
    private static final int SWEEPS = 2000;

    private final Candidate candidate;
    private final Circuit circuit;
    private final List<Way> ways = new ArrayList<>();
    private final Map<Integer, GroundPoint> groundOf = new LinkedHashMap<>();
    private final double[] potential;
    private final Set<String> closedContactors;

    /** A way for current through a part. */
    private record Way(Part part, Element element, int from, int to) {
        boolean oneWay() {
            return element.passage() == Passage.ONE_WAY;
        }
    }

    CandidateMetal(Candidate candidate) {
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
        closedContactors = closedContactors();
    }

    private static boolean carries(Part part, Element element) {
        return part instanceof DcConverter
                || (element.passage() != Passage.NONE
                        && !(part instanceof Load || part instanceof GroundPoint));
    }

    /** A converter's element lies over its input; its current comes out at its output. */
    private Way way(Part part, Placed placed) {
        return part instanceof DcConverter
                ? new Way(
                        part,
                        placed.element(),
                        circuit.net(part.id(), "in"),
                        circuit.net(part.id(), "out"))
                : new Way(part, placed.element(), placed.from(), placed.to());
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
    Optional<GroundPoint> groundAt(int net) {
        return Optional.ofNullable(groundOf.get(net));
    }

    /** The wire by which this net reaches its ground; empty where it is bolted to it. */
    Optional<Wire> wireToGround(int net) {
        boolean bolted =
                net == 0
                        || candidate
                                .all(GroundPoint.class)
                                .anyMatch(
                                        point ->
                                                point.terminals().stream()
                                                        .anyMatch(t -> net(point, t) == net));
        return bolted
                ? Optional.empty()
                : candidate
                        .all(Wire.class)
                        .filter(w -> net(w, "a") == net || net(w, "b") == net)
                        .findFirst();
    }

    /** Higher nearer the sources, lower nearer the loads. */
    double potential(int net) {
        return potential[net];
    }

    /** Whether a switch's contact or a contactor's is closed in normal flight. */
    boolean closedInFlight(Part part, Element element) {
        return closed(part, element, closedContactors);
    }

    /** Whether a breaker is pulled in normal flight. */
    boolean pulledInFlight(String breaker) {
        return candidate.cockpit().flight().getOrDefault(breaker, "in").equals("pulled");
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

    /** Whether only wires lie between a contactor's contacts and its coil. */
    boolean feedsItsOwnCoil(Contactor contactor) {
        BitSet joined =
                reached(List.of(net(contactor, "coil-plus")), way -> way.part instanceof Wire);
        return joined.get(net(contactor, "in")) || joined.get(net(contactor, "out"));
    }

    /** Ground nets are those that a ground point's terminals or wires alone lead to. */
    private void nameGrounds() {
        candidate
                .all(GroundPoint.class)
                .forEach(
                        point -> {
                            for (String terminal : point.terminals()) {
                                groundOf.putIfAbsent(net(point, terminal), point);
                            }
                        });
        Deque<Integer> open = new ArrayDeque<>(groundOf.keySet());
        while (!open.isEmpty()) {
            int net = open.remove();
            GroundPoint point = groundOf.get(net);
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
            if (part instanceof Load load) {
                load.inputs().forEach(input -> hold(values, held, net(load, input), 0));
            } else if (part instanceof Alternator) {
                hold(values, held, net(part, "field"), 0);
            } else if (part instanceof Contactor contactor) {
                hold(values, held, net(part, "coil-minus"), 0);
                if (!feedsItsOwnCoil(contactor)) {
                    hold(values, held, net(part, "coil-plus"), 0);
                }
            }
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
        List<Integer> nets = new ArrayList<>();
        candidate.all(Battery.class).forEach(b -> nets.add(net(b, "plus")));
        candidate.all(Alternator.class).forEach(a -> nets.add(net(a, "output")));
        return nets;
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

    private Set<String> closedContactors() {
        Set<String> closed = new HashSet<>();
        boolean changed = true;
        while (changed) {
            Set<String> before = Set.copyOf(closed);
            Predicate<Way> passes = way -> closed(way.part, way.element, before);
            BitSet live = reached(sourceNets(), passes);
            BitSet grounded = reached(List.copyOf(groundOf.keySet()), passes);
            candidate
                    .all(Contactor.class)
                    .filter(
                            c ->
                                    live.get(net(c, "coil-plus"))
                                            && grounded.get(net(c, "coil-minus")))
                    .forEach(c -> closed.add(c.id()));
            changed = closed.size() > before.size();
        }
        return Set.copyOf(closed);
    }

    private boolean closed(Part part, Element element, Set<String> closedContactors) {
        String position = candidate.cockpit().flight().getOrDefault(part.id(), "off");
        boolean pulled = closedContactors.contains(part.id());
        return element.commandedBy().map(control -> control.closes(position, pulled)).orElse(true);
    }
}
