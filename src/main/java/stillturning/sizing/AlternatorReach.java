package stillturning.sizing;

import java.util.BitSet;
import java.util.stream.IntStream;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Element.Role;
import stillturning.story.SteadyState;

/**
 * The nets that are joined to an alternator's output in a state of the flight, by metal, diodes or
 * converters either way round: whose loads and batteries a larger alternator would relieve. The
 * structure joins nothing, since everything returns there.
 */
final class AlternatorReach {

    private static final int STRUCTURE = 0;

    /** Less than this is the leak of an open contact (A). */
    private static final double LEAK_AMPS = 1e-9;

    private final BitSet joined = new BitSet();

    AlternatorReach(Circuit circuit, SteadyState flow) {
        int[] group = IntStream.range(0, circuit.nets()).toArray();
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Conversion conversion) {
                int plus = circuit.net(placed.part(), conversion.output().plus());
                join(group, placed.from(), plus);
            } else if (placed.element().passage() != Passage.NONE && closed(placed, flow)) {
                join(group, placed.from(), placed.to());
            }
        }
        for (Placed placed : circuit.placed()) {
            if (placed.element().role() == Role.GENERATOR) {
                int output = group[placed.from()];
                IntStream.range(0, group.length)
                        .filter(n -> group[n] == output)
                        .forEach(joined::set);
            }
        }
    }

    private static boolean closed(Placed placed, SteadyState flow) {
        return placed.element().commandedBy().isEmpty()
                || Math.abs(flow.amps(placed.part(), placed.element().name())) > LEAK_AMPS;
    }

    private static void join(int[] group, int one, int other) {
        if (one == STRUCTURE || other == STRUCTURE || group[one] == group[other]) {
            return;
        }
        int gone = group[other];
        for (int net = 0; net < group.length; net++) {
            if (group[net] == gone) {
                group[net] = group[one];
            }
        }
    }

    /** Whether an alternator is joined to the plus of a battery. */
    boolean of(Placed battery) {
        return joined.get(battery.from());
    }
}
