package stillturning.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Cable;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Protector;
import stillturning.sizing.result.Limits;
import stillturning.sizing.result.WireSchedule.Drop;
import stillturning.sizing.result.WireSchedule.Main;
import stillturning.story.timeline.SteadyState;

/** What the wires from each source to the buses next to it drop. */
final class Mains {

    private static final double FIVE_MINUTES = 300;
    private static final int STRUCTURE = 0;
    private static final double LEAK_AMPS = 1e-9;

    /** A net that is reached, by way of these elements, with so much wire between (ohm). */
    private record Reached(int net, double ohms, List<Placed> way) {}

    private final Subject subject;
    private final Map<Integer, List<Placed>> at = new HashMap<>();

    Mains(Subject subject) {
        this.subject = subject;
        for (Placed placed : subject.circuit().placed()) {
            if (placed.element().passage() != Passage.NONE && closed(placed)) {
                at.computeIfAbsent(placed.from(), n -> new ArrayList<>()).add(placed);
                at.computeIfAbsent(placed.to(), n -> new ArrayList<>()).add(placed);
            }
        }
    }

    /** An open contact carries nothing at all. */
    private boolean closed(Placed placed) {
        SteadyState flow = subject.survey().rest(subject.study().goals().failurePhase());
        return placed.element().commandedBy().isEmpty()
                || Math.abs(flow.amps(placed.part(), placed.element().name())) > LEAK_AMPS;
    }

    List<Main> all() {
        List<Main> mains = new ArrayList<>();
        for (Part part : subject.candidate().parts()) {
            for (Element element : part.elements()) {
                if (element instanceof Cell cell) {
                    add(part.id(), cell.from(), fiveMinuteAmps(cell.capacity()), mains);
                } else if (element instanceof Generator generator) {
                    add(part.id(), generator.from(), generator.output().largestAmps(), mains);
                }
            }
        }
        return mains;
    }

    /** The current that empties it in five minutes (A), by its own Peukert exponent. */
    static double fiveMinuteAmps(Capacity capacity) {
        double rated = capacity.ratedAmps();
        double hours = capacity.ratedHours() * 3600;
        return rated * Math.pow(hours / FIVE_MINUTES, 1 / capacity.exponent());
    }

    private void add(String source, String terminal, double amps, List<Main> mains) {
        for (Reached bus : busesFrom(subject.circuit().net(source, terminal))) {
            double most =
                    bus.way.stream()
                            .filter(p -> p.element() instanceof Protector)
                            .mapToDouble(p -> ((Protector) p.element()).ratedAmps())
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
            double flowing = Math.min(amps, most);
            mains.add(
                    new Main(
                            source,
                            nameOf(bus.net),
                            bus.way.stream()
                                    .filter(p -> wire(p).isPresent())
                                    .map(Placed::part)
                                    .toList(),
                            flowing,
                            new Drop(
                                    flowing * bus.ohms,
                                    Limits.MAIN_POWER_SHARE * subject.nominalVolts(),
                                    true)));
        }
    }

    private Optional<Wire> wire(Placed placed) {
        return subject.candidate().wire(placed.part());
    }

    /** Whether a uniform size on the way would drop little enough. */
    boolean suits(Main main, Cable cable) {
        double metres =
                main.wires().stream()
                        .map(id -> subject.candidate().wire(id).orElseThrow())
                        .mapToDouble(Wire::metres)
                        .sum();
        return main.amps() * cable.ohmsPerMetre() * metres
                <= main.drop().limitVolts() * Limits.ROUNDING;
    }

    private String nameOf(int bar) {
        return subject.candidate()
                .all(Part.Role.BUS)
                .filter(b -> subject.circuit().net(b.id(), b.exit()) == bar)
                .map(Part::id)
                .findFirst()
                .orElseThrow();
    }

    /** Dijkstra's algorithm over the wires' resistance, not beyond the first bus nor a load. */
    private List<Reached> busesFrom(int start) {
        Set<Integer> bars = new HashSet<>();
        subject.candidate()
                .all(Part.Role.BUS)
                .forEach(b -> bars.add(subject.circuit().net(b.id(), b.exit())));
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
