package stillturning.story.device.plant;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element.Passage;
import stillturning.story.Story.Feed;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Situation;

/** Which sources can reach which loads at this instant, and be reached back. */
final class SourceReach {

    private final Circuit circuit;
    private final BranchLayout layout;
    private final Situation now;
    private final List<List<Way>> ways = new ArrayList<>();

    /** What current may pass on its way. */
    private enum Through {
        /** Metal that conducts now; diodes and converters forwards. */
        ONE_WAY,
        /** Also switches that the pilot can close. */
        CLOSABLE,
        /** Also the aircraft's structure: the way back. */
        STRUCTURE
    }

    /** A branch seen from one of its nets. */
    private record Way(Seat seat, int to, boolean against) {}

    SourceReach(Circuit circuit, BranchLayout layout, Situation now) {
        this.circuit = circuit;
        this.layout = layout;
        this.now = now;
        for (int net = 0; net < circuit.nets(); net++) {
            ways.add(new ArrayList<>());
        }
        for (Seat seat : layout.seats) {
            Placed placed = seat.placed();
            if (placed.element() instanceof Conversion conversion) {
                int out = circuit.net(placed.part(), conversion.output().plus());
                ways.get(placed.from()).add(new Way(seat, out, false));
            } else if (placed.element().passage() != Passage.NONE) {
                ways.get(placed.from()).add(new Way(seat, placed.to(), false));
                ways.get(placed.to()).add(new Way(seat, placed.from(), true));
            }
        }
    }

    /**
     * Every source–input pair between which current can flow out and back. A source shorted to the
     * structure feeds nobody.
     */
    Set<Feed> feeds() {
        Set<Feed> feeds = new HashSet<>();
        for (Seat seat : layout.seats) {
            if (seat.placed().element().role().isSource()
                    && now.solver.law(seat.branch()).conducts()) {
                addFeedsOf(seat.placed(), feeds);
            }
        }
        return feeds;
    }

    /** Whether current of a source that can give comes to this net, forwards through diodes. */
    boolean sourceJoinedTo(int net) {
        return layout.seats.stream()
                .filter(seat -> seat.placed().element().role().isSource())
                .filter(seat -> now.solver.law(seat.branch()).emfVolts() > 0)
                .anyMatch(seat -> reaches(seat.placed().from(), net));
    }

    /** Whether a source that can give, other than this one, feeds something between two nets. */
    boolean anotherFeeds(int plus, int minus, int branch) {
        return layout.seats.stream()
                .filter(seat -> seat.placed().element().role().isSource())
                .filter(seat -> seat.branch() != branch)
                .filter(seat -> now.solver.law(seat.branch()).emfVolts() > 0)
                .map(Seat::placed)
                .anyMatch(
                        source ->
                                reaches(source.from(), plus)
                                        && from(source.to(), Through.STRUCTURE)[minus]);
    }

    /** Whether current can get from one net to another, forwards through diodes. */
    boolean reaches(int from, int to) {
        return from(from, Through.ONE_WAY)[to];
    }

    private void addFeedsOf(Placed source, Set<Feed> feeds) {
        if (from(source.from(), Through.ONE_WAY)[0]) {
            return;
        }
        boolean[] out = from(source.from(), Through.CLOSABLE);
        boolean[] back = from(source.to(), Through.STRUCTURE);
        for (LoadNeed load : now.aircraft.loads()) {
            if (reached(back, load.id(), "minus")) {
                for (String input : load.inputs()) {
                    if (reached(out, load.id(), input)) {
                        feeds.add(new Feed(source.part(), load.id(), input));
                    }
                }
            }
        }
    }

    private boolean reached(boolean[] nets, String part, String terminal) {
        return circuit.find(part, terminal).map(net -> nets[net]).orElse(false);
    }

    private boolean[] from(int start, Through through) {
        boolean[] seen = new boolean[circuit.nets()];
        int[] found = new int[circuit.nets()];
        found[0] = start;
        seen[start] = true;
        int count = 1;
        for (int next = 0; next < count; next++) {
            int net = found[next];
            if (net == 0 && through != Through.STRUCTURE) {
                continue;
            }
            for (Way way : ways.get(net)) {
                if (!seen[way.to()] && passes(way, through)) {
                    seen[way.to()] = true;
                    found[count++] = way.to();
                }
            }
        }
        return seen;
    }

    private boolean passes(Way way, Through through) {
        Placed placed = way.seat().placed();
        boolean oneWay = placed.element().passage() != Passage.BOTH_WAYS;
        if (oneWay && way.against()) {
            return false;
        }
        return now.solver.law(way.seat().branch()).conducts()
                || (through.compareTo(Through.CLOSABLE) >= 0 && closable(placed));
    }

    /** A switch that a procedure moves is a way that the pilot can open up. */
    private boolean closable(Placed placed) {
        return placed.element() instanceof Contact contact
                && contact.control() instanceof Control.ByHand
                && now.movable.contains(placed.part());
    }
}
