package stillturning.sizing;

import static stillturning.parts.element.Element.Passage.BOTH_WAYS;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Part;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Element.Role;
import stillturning.story.SteadyState;

/**
 * What alternators have to do with a battery in a state of the flight. They charge one that current
 * reaches from their outputs by metal, through diodes one way. They relieve one of which current
 * flows to where they feed, or the other way round: what it gives there, a larger alternator would
 * give. The diodes by which a load chooses among its inputs join nothing: one input relieves the
 * other of that load alone, and charges nothing. Neither does the structure, since everything
 * returns there.
 */
final class AlternatorReach {

    private static final int STRUCTURE = 0;

    /** Less than this is the leak of an open contact (A). */
    private static final double LEAK_AMPS = 1e-9;

    /** Less than this is the leak of a diode that blocks (A). */
    private static final double BLOCKED_AMPS = 1e-3;

    private final Set<Integer> relieved;
    private final Set<Integer> charged;

    AlternatorReach(Candidate candidate, Circuit circuit, SteadyState flow) {
        List<Placed> outside =
                circuit.placed().stream()
                        .filter(placed -> !candidate.has(placed.part(), Part.Role.LOAD))
                        .filter(placed -> closed(placed, flow))
                        .toList();
        List<Integer> outputs =
                circuit.placed().stream()
                        .filter(placed -> placed.element().role() == Role.GENERATOR)
                        .map(Placed::from)
                        .toList();
        charged = reached(onward(circuit, outside, false), outputs);
        List<Placed> flowing = outside.stream().filter(placed -> !blocks(placed, flow)).toList();
        relieved = reached(onward(circuit, flowing, true), outputs);
    }

    /** The nets that closed metal joins to the output of one alternator. */
    static Set<Integer> metal(Circuit circuit, SteadyState flow, Placed alternator) {
        List<Placed> metal =
                circuit.placed().stream()
                        .filter(placed -> placed.element().passage() == BOTH_WAYS)
                        .filter(placed -> closed(placed, flow))
                        .toList();
        return reached(onward(circuit, metal, true), List.of(alternator.from()));
    }

    /** Where current may go from each net. */
    private static Map<Integer, List<Integer>> onward(
            Circuit circuit, List<Placed> through, boolean eitherWay) {
        Map<Integer, List<Integer>> onward = new HashMap<>();
        for (Placed placed : through) {
            Passage passage = placed.element().passage();
            if (placed.element() instanceof Conversion conversion) {
                int plus = circuit.net(placed.part(), conversion.output().plus());
                way(onward, placed.from(), plus, eitherWay);
            }
            if (passage != Passage.NONE) {
                way(onward, placed.from(), placed.to(), eitherWay || passage == BOTH_WAYS);
            }
        }
        return onward;
    }

    private static void way(
            Map<Integer, List<Integer>> onward, int one, int other, boolean eitherWay) {
        if (one != STRUCTURE && other != STRUCTURE) {
            onward.computeIfAbsent(one, net -> new ArrayList<>()).add(other);
        }
        if (eitherWay) {
            way(onward, other, one, false);
        }
    }

    private static Set<Integer> reached(Map<Integer, List<Integer>> onward, List<Integer> from) {
        Set<Integer> reached = new HashSet<>(from);
        Deque<Integer> waiting = new ArrayDeque<>(from);
        while (!waiting.isEmpty()) {
            for (int net : onward.getOrDefault(waiting.remove(), List.of())) {
                if (reached.add(net)) {
                    waiting.add(net);
                }
            }
        }
        return reached;
    }

    private static boolean closed(Placed placed, SteadyState flow) {
        return placed.element().commandedBy().isEmpty()
                || Math.abs(flow.amps(placed.part(), placed.element().name())) > LEAK_AMPS;
    }

    private static boolean blocks(Placed placed, SteadyState flow) {
        return placed.element().passage() == Passage.ONE_WAY
                && flow.amps(placed.part(), placed.element().name()) < BLOCKED_AMPS;
    }

    /** Whether a larger alternator would relieve a battery. */
    boolean relieves(Placed battery) {
        return relieved.contains(battery.from());
    }

    /** Whether an alternator charges a battery where its voltage is high enough. */
    boolean charges(Placed battery) {
        return charged.contains(battery.from());
    }
}
