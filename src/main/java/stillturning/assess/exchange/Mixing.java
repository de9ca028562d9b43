package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.parts.Exchangeable;
import stillturning.parts.Part;

/** Makes candidates that have some groups from one candidate and the rest from another. */
final class Mixing {

    private final List<PairedWiring> pair;
    private final List<Region> regions;
    private final List<BatteryPairs.Pair> batteries;

    Mixing(Candidate one, Candidate other) {
        pair = PairedWiring.pair(one, other);
        regions = Region.between(pair);
        batteries = BatteryPairs.of(one, other);
    }

    /** In which groups they differ, and by which parts, in the order of the groups. */
    Map<Group, List<String>> differences() {
        Map<Group, List<String>> found = new EnumMap<>(Group.class);
        for (BatteryPairs.Pair one : batteries) {
            if (!one.alike()) {
                add(found, Group.BATTERIES, one.here());
            }
        }
        for (Region region : regions) {
            List<String> parts = found.computeIfAbsent(region.group(), g -> new ArrayList<>());
            region.here().forEach(part -> parts.add(part.id()));
            region.there().forEach(part -> parts.add(part.id()));
        }
        for (Part here : common()) {
            Part there = pair.get(1).parts().getOrDefault(here.id(), here);
            if (!here.equals(there) && !BatteryPairs.isBattery(here)) {
                add(found, ofValues(here), here);
            }
        }
        if (!pair.get(0).candidate().cockpit().equals(pair.get(1).candidate().cockpit())) {
            found.computeIfAbsent(Group.PROCEDURES, g -> new ArrayList<>());
        }
        return found;
    }

    private static void add(Map<Group, List<String>> found, Group group, Part part) {
        found.computeIfAbsent(group, g -> new ArrayList<>()).add(part.id());
    }

    /** The group of a part of which both have one with other values. */
    private static Group ofValues(Part part) {
        if (part.role() == Part.Role.WIRE) {
            return Group.WIRES;
        }
        if (part.role() == Part.Role.GROUND) {
            return Group.GROUNDS;
        }
        if (Region.charges(part)) {
            return Group.CHARGING;
        }
        return Region.acts(part) ? Group.SWITCHING : Group.FEEDS;
    }

    private List<Part> common() {
        PairedWiring one = pair.get(0);
        return one.parts().values().stream().filter(p -> one.isCommon(p.id())).toList();
    }

    /**
     * The first candidate with some groups from the second; empty if something would hang in the
     * air.
     */
    Optional<Candidate> mix(Set<Group> exchanged) {
        List<Part> parts = parts(exchanged);
        Map<Terminal, Integer> sides = sides(exchanged);
        Nets<Terminal> nets = nets(exchanged, sides, ids(parts));
        if (!joinedAsBefore(parts, nets, exchanged, sides)) {
            return Optional.empty();
        }
        List<Join> joins = new ArrayList<>();
        for (List<Terminal> net : nets.all()) {
            for (int i = 1; i < net.size(); i++) {
                joins.add(new Join(net.get(0), net.get(i)));
            }
        }
        Candidate base = pair.get(0).candidate();
        Candidate bare =
                new Candidate(base.id(), base.title(), base.about(), parts, joins, base.cockpit());
        boolean procedures = exchanged.contains(Group.PROCEDURES);
        return Optional.of(
                bare.with(
                        new MixedCockpit(
                                        pair.get(procedures ? 1 : 0).candidate(),
                                        pair.get(procedures ? 0 : 1).candidate(),
                                        bare)
                                .cockpit()));
    }

    private static Set<String> ids(List<Part> parts) {
        Set<String> ids = new HashSet<>();
        parts.forEach(p -> ids.add(p.id()));
        return ids;
    }

    private List<Part> parts(Set<Group> exchanged) {
        Map<String, Part> parts = new LinkedHashMap<>();
        for (Part part : pair.get(0).parts().values()) {
            if (pair.get(0).isCommon(part.id())) {
                Part there = pair.get(1).parts().getOrDefault(part.id(), part);
                parts.put(part.id(), exchanged.contains(ofValues(part)) ? there : part);
            } else if (!exchanged.contains(groupOf(0, part.id()))) {
                parts.put(part.id(), part);
            }
        }
        for (Part part : pair.get(1).own()) {
            if (exchanged.contains(groupOf(1, part.id()))) {
                parts.put(part.id(), part);
            }
        }
        boolean theirs = exchanged.contains(Group.BATTERIES);
        for (BatteryPairs.Pair two : batteries) {
            Part values = theirs ? two.there() : two.here();
            parts.computeIfPresent(two.here().id(), (id, p) -> placed(values, p));
            parts.computeIfPresent(two.there().id(), (id, p) -> placed(values, p));
        }
        return List.copyOf(parts.values());
    }

    private static Part placed(Part values, Part place) {
        return Exchangeable.exchanged(values, place).orElse(place);
    }

    private Group groupOf(int side, String part) {
        return regions.stream()
                .filter(r -> (side == 0 ? r.here() : r.there()).stream().anyMatch(is(part)))
                .map(Region::group)
                .findFirst()
                .orElse(Group.FEEDS);
    }

    private static Predicate<Part> is(String id) {
        return part -> part.id().equals(id);
    }

    /** From which candidate each terminal that is joined otherwise has its joins: 0 or 1. */
    private Map<Terminal, Integer> sides(Set<Group> exchanged) {
        Map<Terminal, Integer> sides = new HashMap<>();
        for (Region region : regions) {
            int side = exchanged.contains(region.group()) ? 1 : 0;
            region.pins().forEach(pin -> sides.put(pin, side));
        }
        return sides;
    }

    /** What of both candidates' nets is left once each region is taken from its side. */
    private Nets<Terminal> nets(
            Set<Group> exchanged, Map<Terminal, Integer> sides, Set<String> parts) {
        Nets<Terminal> nets = new Nets<>();
        for (int side = 0; side < 2; side++) {
            PairedWiring wiring = pair.get(side);
            for (List<Terminal> net : wiring.nets()) {
                int now = side;
                nets.tieAll(
                        net.stream()
                                .filter(t -> parts.contains(t.part()))
                                .filter(t -> of(now, t, wiring, sides, exchanged))
                                .toList());
            }
        }
        return nets;
    }

    /** Whether a terminal is joined as on one side; where both are alike, studs as on either. */
    private boolean of(
            int side,
            Terminal terminal,
            PairedWiring wiring,
            Map<Terminal, Integer> sides,
            Set<Group> exchanged) {
        if (!wiring.isCommon(terminal.part())) {
            return exchanged.contains(groupOf(side, terminal.part())) == (side == 1);
        }
        Integer moved = sides.get(terminal);
        return moved == null ? side == 0 || wiring.isStud(terminal) : moved == side;
    }

    /** Whether every terminal that is joined where its joins come from is joined. */
    private boolean joinedAsBefore(
            List<Part> parts,
            Nets<Terminal> nets,
            Set<Group> exchanged,
            Map<Terminal, Integer> sides) {
        Set<Terminal> joined = new HashSet<>();
        nets.all().stream().filter(net -> net.size() > 1).forEach(joined::addAll);
        return parts.stream()
                .flatMap(p -> p.terminals().stream().map(name -> new Terminal(p.id(), name)))
                .filter(t -> home(t, exchanged, sides).net(t).size() > 1)
                .allMatch(joined::contains);
    }

    private PairedWiring home(
            Terminal terminal, Set<Group> exchanged, Map<Terminal, Integer> sides) {
        String part = terminal.part();
        if (pair.get(0).isCommon(part)) {
            return pair.get(sides.getOrDefault(terminal, 0));
        }
        boolean there = pair.get(1).parts().containsKey(part);
        return pair.get(there && exchanged.contains(groupOf(1, part)) ? 1 : 0);
    }
}
