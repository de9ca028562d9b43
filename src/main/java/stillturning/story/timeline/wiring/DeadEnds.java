package stillturning.story.timeline.wiring;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard;
import stillturning.story.timeline.wiring.Layouts.Left;

/**
 * Metal that leads nowhere: at one end it meets nothing else, and nobody measures there. No current
 * ever flows through it, whatever else happens, so no story tells of it, and what is left without
 * it has the same story. A chain open at one place or at another is by it one circuit.
 */
final class DeadEnds {

    private final Map<String, Integer> places = new HashMap<>();
    private final List<Placed> intact;

    /**
     * Parts of more than metal: what happens to them is told by their name, as that a contactor
     * drops out.
     */
    private final Set<String> speaking = new HashSet<>();

    /** Nets at which something is read that no element says. */
    private final BitSet watched = new BitSet();

    /**
     * A circuit without its dead ends.
     *
     * @param left equal for circuits of which the same is left
     */
    record Trimmed(Circuit circuit, Left left) {}

    /**
     * @param circuit the candidate's, nothing wrong
     */
    DeadEnds(Candidate candidate, Circuit circuit) {
        intact = circuit.placed();
        intact.forEach(placed -> places.put(placed.name(), places.size()));
        intact.stream()
                .filter(placed -> placed.element().role() != Element.Role.PATH)
                .forEach(placed -> speaking.add(placed.part()));
        circuit.returns().all().forEach(watched::set);
        Stream<Terminal> buses =
                candidate.all(Part.Role.BUS).map(bus -> new Terminal(bus.id(), bus.exit()));
        Stream<Terminal> cues =
                candidate.cockpit().cues().stream().flatMap(cue -> cue.sign().measures().stream());
        Stream<Terminal> loads =
                candidate.loads().flatMap(load -> load.terminals().stream().map(t -> at(load, t)));
        Stream<Terminal> guards =
                intact.stream()
                        .filter(placed -> placed.element() instanceof Guard)
                        .flatMap(placed -> sensed(placed, (Guard) placed.element()));
        Stream.of(buses, cues, loads, guards)
                .flatMap(terminals -> terminals)
                .forEach(t -> watched.set(circuit.net(t.part(), t.name())));
    }

    private static Terminal at(Part part, String name) {
        return new Terminal(part.id(), name);
    }

    private static Stream<Terminal> sensed(Placed placed, Guard guard) {
        return Stream.of(guard.sense(), guard.senseReturn())
                .map(name -> new Terminal(placed.part(), name));
    }

    /** The circuit after failures without its dead ends. */
    Trimmed trim(Circuit circuit, List<Hit> hits) {
        int[] joined = joined(circuit);
        List<Placed> kept = new ArrayList<>(circuit.placed());
        while (kept.removeIf(placed -> leadsNowhere(placed, joined))) {
            // what led there may now lead nowhere itself
        }
        return new Trimmed(
                new Circuit(circuit.nets(), circuit.returns(), kept, circuit.netOf()),
                left(kept, hits));
    }

    private int[] joined(Circuit circuit) {
        int[] joined = new int[circuit.nets()];
        for (Placed placed : circuit.placed()) {
            joined[placed.from()]++;
            joined[placed.to()]++;
            if (placed.element() instanceof Conversion conversion) {
                joined[circuit.net(placed.part(), conversion.output().plus())]++;
                joined[circuit.net(placed.part(), conversion.output().minus())]++;
            }
        }
        return joined;
    }

    private boolean leadsNowhere(Placed placed, int[] joined) {
        boolean nowhere =
                placed.element().role() == Element.Role.PATH
                        && !speaking.contains(placed.part())
                        && (isEnd(placed.from(), joined) || isEnd(placed.to(), joined));
        if (nowhere) {
            joined[placed.from()]--;
            joined[placed.to()]--;
        }
        return nowhere;
    }

    private boolean isEnd(int net, int[] joined) {
        return joined[net] == 1 && !watched.get(net);
    }

    private Left left(List<Placed> kept, List<Hit> hits) {
        BitSet same = new BitSet();
        List<Placed> changed = new ArrayList<>();
        for (Placed placed : kept) {
            Integer place = places.get(placed.name());
            if (place != null && isAs(intact.get(place), placed)) {
                same.set(place);
            } else {
                changed.add(placed);
            }
        }
        Set<String> named =
                hits.stream().map(Hit::part).filter(speaking::contains).collect(Collectors.toSet());
        return new Left(same, List.copyOf(changed), named);
    }

    @SuppressWarnings("ReferenceEquality") // nearly all are the same, and quickly seen to be
    private static boolean isAs(Placed one, Placed other) {
        return one == other || one.equals(other);
    }
}
