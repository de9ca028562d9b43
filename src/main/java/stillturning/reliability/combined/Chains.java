package stillturning.reliability.combined;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Cue;
import stillturning.model.Study.Aircraft;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Guard;

/**
 * What carries the same current because it hangs in one chain: nets inside a chain join exactly two
 * elements, and nothing measures their voltage. Open anywhere, it carries nothing anywhere, and
 * everybody outside sees the same.
 */
final class Chains {

    private final Set<String> followed;
    private final Circuit circuit;
    private final List<Placed> placed;
    private final int[] leader;
    private final Map<String, Integer> byName = new HashMap<>();
    private final Map<Integer, Integer> chainOfNet = new HashMap<>();

    Chains(Aircraft aircraft, Candidate candidate) {
        followed = followed(aircraft, candidate);
        circuit = candidate.circuit();
        placed = circuit.placed();
        leader = new int[placed.size()];
        Arrays.setAll(leader, i -> i);
        for (int i = 0; i < placed.size(); i++) {
            byName.put(placed.get(i).name(), i);
        }
        List<List<Integer>> ends = ends();
        Set<Integer> measured = measured(candidate);
        List<Integer> inside = new ArrayList<>();
        for (int net = 1; net < circuit.nets(); net++) {
            List<Integer> two = ends.get(net);
            if (two.size() == 2
                    && !measured.contains(net)
                    && hangs(two.get(0))
                    && hangs(two.get(1))) {
                leader[root(two.get(0))] = root(two.get(1));
                inside.add(net);
            }
        }
        inside.forEach(net -> chainOfNet.put(net, root(ends.get(net).get(0))));
    }

    /** The chain that is open once this element is gone, if it is one. */
    Optional<Integer> openedBy(String part, String element) {
        return Optional.ofNullable(byName.get(part + "/" + element))
                .filter(this::opens)
                .map(this::root);
    }

    /** The chain that a terminal is inside of, if there is one. */
    Optional<Integer> around(String part, String terminal) {
        return circuit.find(part, terminal).map(chainOfNet::get);
    }

    private List<List<Integer>> ends() {
        List<List<Integer>> ends = new ArrayList<>();
        for (int net = 0; net < circuit.nets(); net++) {
            ends.add(new ArrayList<>());
        }
        for (int i = 0; i < placed.size(); i++) {
            Placed one = placed.get(i);
            ends.get(one.from()).add(i);
            ends.get(one.to()).add(i);
            if (one.element() instanceof Conversion conversion) {
                ends.get(circuit.net(one.part(), conversion.output().plus())).add(i);
                ends.get(circuit.net(one.part(), conversion.output().minus())).add(i);
            }
        }
        return ends;
    }

    private Set<Integer> measured(Candidate candidate) {
        Set<Integer> nets = new HashSet<>();
        for (Cue cue : candidate.cockpit().cues()) {
            cue.sign()
                    .measures()
                    .flatMap(at -> circuit.find(at.part(), at.name()))
                    .ifPresent(nets::add);
        }
        for (Placed one : placed) {
            if (one.element() instanceof Guard guard) {
                nets.add(circuit.net(one.part(), guard.sense()));
                nets.add(circuit.net(one.part(), guard.senseReturn()));
            }
        }
        return nets;
    }

    /** Whether it carries what its neighbour carries, and notices nothing but that. */
    private boolean hangs(int index) {
        return opens(index) || placed.get(index).element().role().isLoad();
    }

    /**
     * Whether its going is nothing but an opening. A coil or a load that is gone lets go at once;
     * one that is no longer fed takes its time, which makes no difference if nobody asks.
     */
    private boolean opens(int index) {
        return switch (placed.get(index).element().role()) {
            case PATH -> true;
            case LOAD -> !followed.contains(placed.get(index).part());
            case BATTERY, GENERATOR, CAPACITOR, COIL, CONVERTER, ELECTRONICS -> false;
        };
    }

    /** Parts of which anything hangs on whether, and when, their consumers work. */
    private static Set<String> followed(Aircraft aircraft, Candidate candidate) {
        Set<String> followed = new HashSet<>(aircraft.engine().logic().loads());
        candidate.parts().stream()
                .filter(part -> part.logics() > 0)
                .forEach(part -> followed.add(part.id()));
        for (Cue cue : candidate.cockpit().cues()) {
            cue.shownBy().ifPresent(followed::add);
            if (cue.sign() instanceof Cue.LoadStops stops) {
                followed.add(stops.load());
            }
        }
        candidate.cockpit().procedures().stream()
                .flatMap(procedure -> procedure.execution().automatic().stream())
                .forEach(followed::add);
        return followed;
    }

    /** A load of these in the chain, which then carries nothing until that load runs. */
    Optional<String> idleIn(int chain, Set<String> idle) {
        for (int i = 0; i < placed.size(); i++) {
            Placed one = placed.get(i);
            if (root(i) == chain
                    && one.element() instanceof Consumer
                    && idle.contains(one.part())) {
                return Optional.of(one.part());
            }
        }
        return Optional.empty();
    }

    private int root(int index) {
        int at = index;
        while (leader[at] != at) {
            at = leader[at];
        }
        return at;
    }
}
