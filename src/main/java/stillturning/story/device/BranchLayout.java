package stillturning.story.device;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.network.Topology;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Element.Role;

/**
 * The branches of a circuit: one an element, two for a converter, none where both ends meet. Never
 * changes; runs share it.
 */
public final class BranchLayout {

    /** An element with the index of its branch; a converter's output branch follows its input. */
    public record Seat(Placed placed, int branch) {}

    public final List<Seat> seats;
    public final int[] from;
    public final int[] to;
    public final Topology topology;

    /** What is known of states of the network, whichever of the candidate's parts have failed. */
    public final Answers answers;

    /**
     * Lays a circuit out.
     *
     * @param intact the layout of the same candidate with nothing wrong: what is known of it is
     *     taken over, and its analysis where the structure is the same
     */
    public BranchLayout(Circuit circuit, Optional<BranchLayout> intact) {
        List<Seat> seated = new ArrayList<>();
        List<int[]> ends = new ArrayList<>();
        for (Placed placed : circuit.placed()) {
            List<int[]> own = endsOf(placed, circuit);
            if (haveLength(own)) {
                seated.add(new Seat(placed, ends.size()));
                ends.addAll(own);
            }
        }
        seats = List.copyOf(seated);
        from = ends.stream().mapToInt(e -> e[0]).toArray();
        to = ends.stream().mapToInt(e -> e[1]).toArray();
        answers = intact.map(layout -> layout.answers).orElseGet(Answers::new);
        topology =
                intact.map(layout -> layout.topology)
                        .filter(known -> fits(circuit.nets(), known))
                        .orElseGet(() -> Topology.of(circuit.nets(), from, to, straight()));
    }

    /** Metal, whole or opened, has a straight law. */
    private boolean[] straight() {
        boolean[] straight = new boolean[from.length];
        for (Seat seat : seats) {
            Element element = seat.placed.element();
            straight[seat.branch] =
                    element.role() == Role.PATH && element.passage() == Passage.BOTH_WAYS;
        }
        return straight;
    }

    /** The part that a branch belongs to; none before the first. */
    public Optional<String> partAt(int branch) {
        return seats.stream()
                .filter(seat -> seat.branch <= branch)
                .reduce((before, seat) -> seat)
                .map(seat -> seat.placed.part());
    }

    private static boolean haveLength(List<int[]> ends) {
        for (int[] end : ends) {
            if (end[0] == end[1]) {
                return false;
            }
        }
        return true;
    }

    private static List<int[]> endsOf(Placed placed, Circuit circuit) {
        List<int[]> ends = new ArrayList<>();
        ends.add(new int[] {placed.from(), placed.to()});
        if (placed.element() instanceof Conversion conversion) {
            int plus = circuit.net(placed.part(), conversion.output().plus());
            int minus = circuit.net(placed.part(), conversion.output().minus());
            ends.add(new int[] {plus, minus});
        }
        return ends;
    }

    private boolean fits(int nets, Topology known) {
        if (known.nets() != nets) {
            return false;
        }
        for (int i = 0; i < from.length; i++) {
            if (!known.accommodates(from[i], to[i])) {
                return false;
            }
        }
        return true;
    }
}
