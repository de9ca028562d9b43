package stillturning.structure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Generator;
import stillturning.parts.joining.Bus;
import stillturning.parts.switching.Switch;

/**
 * The same questions answered slowly and plainly: every position of every lever, every set of
 * parts, reachability as a closure of the whole matrix.
 */
final class PlainLook {

    private final Candidate candidate;
    private final Circuit circuit;
    private final List<List<String>> leverPositions = new ArrayList<>();
    private final List<String> levers = new ArrayList<>();

    PlainLook(Candidate candidate) {
        this.candidate = candidate;
        this.circuit = candidate.circuit();
        candidate.parts().stream()
                .filter(Switch.class::isInstance)
                .forEach(
                        lever -> {
                            levers.add(lever.id());
                            leverPositions.add(positions(lever.id()));
                        });
    }

    /** Whether, without these parts, some position of all levers feeds enough. */
    boolean canRun(Set<String> gone, Predicate<Predicate<String>> enough) {
        return anyPositions(
                at -> {
                    Set<Placed> open = settled(gone, closed(at));
                    return enough.test(load -> isFed(load, gone, open));
                });
    }

    /** Whether, without these parts and with nothing letting go, current comes to a terminal. */
    boolean comes(Set<String> gone, String part, String terminal) {
        return way(
                gone,
                (source, reach) ->
                        reach[source.from()][circuit.net(part, terminal)]
                                && !gone.contains(source.part()));
    }

    /** Whether, without these parts and with nothing letting go, current gets back from a load. */
    boolean returns(Set<String> gone, String load) {
        return way(gone, (source, reach) -> reach[circuit.net(load, "minus")][source.to()]);
    }

    private boolean way(Set<String> gone, BiPredicate<Placed, boolean[][]> joined) {
        Set<Placed> best = settled(Set.of(), contact -> closable(contact));
        List<Placed> sources = best.stream().filter(PlainLook::isSource).toList();
        return anyPositions(
                at -> {
                    Set<Placed> open = new LinkedHashSet<>(best);
                    open.removeIf(
                            p ->
                                    isSource(p)
                                            || gone.contains(p.part())
                                            || isOpenContact(p, closed(at)));
                    boolean[][] reach = closure(open, gone, false);
                    return sources.stream().anyMatch(source -> joined.test(source, reach));
                });
    }

    private static boolean isOpenContact(Placed placed, Predicate<Placed> closed) {
        return placed.element() instanceof Contact contact
                && contact.control() instanceof Control.ByHand
                && !closed.test(placed);
    }

    private boolean anyPositions(Predicate<List<String>> holds) {
        return anyPositions(new ArrayList<>(), holds);
    }

    private boolean anyPositions(List<String> chosen, Predicate<List<String>> holds) {
        if (chosen.size() == levers.size()) {
            return holds.test(chosen);
        }
        for (String position : leverPositions.get(chosen.size())) {
            List<String> more = new ArrayList<>(chosen);
            more.add(position);
            if (anyPositions(more, holds)) {
                return true;
            }
        }
        return false;
    }

    private List<String> positions(String lever) {
        Set<String> all = new LinkedHashSet<>();
        all.add(candidate.cockpit().flight().getOrDefault(lever, "nowhere"));
        candidate
                .cockpit()
                .procedures()
                .forEach(p -> all.add(p.moves().getOrDefault(lever, "nowhere")));
        return List.copyOf(all);
    }

    private Predicate<Placed> closed(List<String> at) {
        return placed ->
                ((Control.ByHand) ((Contact) placed.element()).control())
                        .closedAt()
                        .contains(at.get(levers.indexOf(placed.part())));
    }

    private boolean closable(Placed placed) {
        return positions(placed.part()).stream()
                .anyMatch(
                        at ->
                                ((Control.ByHand) ((Contact) placed.element()).control())
                                        .closedAt()
                                        .contains(at));
    }

    private Set<Placed> settled(Set<String> gone, Predicate<Placed> closed) {
        Set<Placed> open = new LinkedHashSet<>();
        for (Placed placed : circuit.placed()) {
            Element element = placed.element();
            boolean conducts =
                    element.passage() != Passage.NONE
                            || isSource(placed)
                            || element instanceof Conversion;
            if (conducts && !gone.contains(placed.part()) && !isOpenContact(placed, closed)) {
                open.add(placed);
            }
        }
        boolean changed;
        do {
            changed = open.removeAll(letGo(gone, open));
        } while (changed);
        return open;
    }

    private List<Placed> letGo(Set<String> gone, Set<Placed> open) {
        boolean[][] reach = closure(open, gone, true);
        boolean[][] surplus = closure(passing(open), gone, false);
        return open.stream().filter(placed -> !holds(placed, open, reach, surplus)).toList();
    }

    private boolean holds(Placed placed, Set<Placed> open, boolean[][] reach, boolean[][] surplus) {
        Element element = placed.element();
        if (element instanceof Conversion) {
            return isFed(placed.from(), placed.to(), open, reach);
        }
        if (element instanceof Contact contact && contact.control() instanceof Control.ByCoil by) {
            return isFed(placed.part(), by.coil(), open, reach);
        }
        if (element instanceof Channel channel) {
            return channel.closedByDefault() || isFed(placed.part(), channel.logic(), open, reach);
        }
        if (element instanceof Generator generator) {
            return isFed(placed.part(), generator.field(), open, reach)
                    && (!generator.needsBattery()
                            || open.stream()
                                    .anyMatch(
                                            p ->
                                                    p.element() instanceof Cell
                                                            && surplus[placed.from()][p.from()]
                                                            && surplus[p.to()][placed.to()]));
        }
        return true;
    }

    private Set<Placed> passing(Set<Placed> open) {
        Set<Placed> passing = new LinkedHashSet<>(open);
        passing.removeIf(p -> p.element().passage() == Passage.NONE);
        return passing;
    }

    private boolean isFed(String load, Set<String> gone, Set<Placed> open) {
        return !gone.contains(load) && isFed(load, Load.WORK, open, closure(open, gone, true));
    }

    private boolean isFed(String part, String element, Set<Placed> open, boolean[][] reach) {
        return circuit.placed().stream()
                .filter(p -> p.part().equals(part) && p.element().name().equals(element))
                .anyMatch(p -> isFed(p.from(), p.to(), open, reach));
    }

    private static boolean isFed(int from, int to, Set<Placed> open, boolean[][] reach) {
        return open.stream()
                .filter(PlainLook::isSource)
                .anyMatch(source -> reach[source.from()][from] && reach[to][source.to()]);
    }

    private static boolean isSource(Placed placed) {
        return placed.element() instanceof Cell || placed.element() instanceof Generator;
    }

    private boolean[][] closure(Set<Placed> open, Set<String> gone, boolean throughSources) {
        int nets = circuit.nets();
        boolean[][] reach = new boolean[nets][nets];
        Set<Integer> dead = deadNets(gone);
        for (int net = 0; net < nets; net++) {
            reach[net][net] = !dead.contains(net);
        }
        for (Placed placed : open) {
            Element element = placed.element();
            if (element instanceof Conversion conversion) {
                set(reach, placed.from(), circuit.net(placed.part(), conversion.output().plus()));
            } else if (isSource(placed)) {
                if (throughSources) {
                    set(reach, placed.to(), placed.from());
                }
            } else {
                set(reach, placed.from(), placed.to());
                if (element.passage() == Passage.BOTH_WAYS) {
                    set(reach, placed.to(), placed.from());
                }
            }
        }
        for (int over = 0; over < nets; over++) {
            for (int from = 0; from < nets; from++) {
                for (int to = 0; to < nets; to++) {
                    reach[from][to] |= reach[from][over] && reach[over][to];
                }
            }
        }
        return reach;
    }

    private static void set(boolean[][] reach, int from, int to) {
        reach[from][to] = reach[from][from] && reach[to][to];
    }

    private Set<Integer> deadNets(Set<String> gone) {
        Set<Integer> dead = new HashSet<>();
        for (Part part : candidate.parts()) {
            if (part instanceof Bus && gone.contains(part.id())) {
                dead.add(circuit.net(part.id(), "bar"));
            }
        }
        return dead;
    }
}
