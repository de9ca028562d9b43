package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Generator;

/**
 * A place where two candidates are not alike.
 *
 * @param here parts that only the first has
 * @param there parts that only the second has
 * @param pins terminals of common parts that are joined otherwise
 */
record Region(List<Part> here, List<Part> there, Set<Terminal> pins) {

    /**
     * All places where two candidates are not alike, in the order of the first, then the second.
     */
    static List<Region> between(List<PairedWiring> pair) {
        Nets<Object> tied = new Nets<>();
        Set<Terminal> moved = moved(pair);
        for (int side = 0; side < 2; side++) {
            PairedWiring wiring = pair.get(side);
            wiring.own().forEach(part -> tied.add(part.id()));
            moved.forEach(tied::add);
            for (List<Terminal> net : wiring.nets()) {
                List<Object> changed = changed(net, wiring, moved);
                boolean stud = wiring.studs(net).stream().anyMatch(s -> !moved.contains(s));
                if (!stud) {
                    tied.tieAll(changed);
                }
            }
        }
        return tied.all().stream().map(together -> region(together, pair)).toList();
    }

    /** What of a net can only be exchanged: parts of one candidate, and pins joined otherwise. */
    private static List<Object> changed(
            List<Terminal> net, PairedWiring wiring, Set<Terminal> moved) {
        List<Object> changed = new ArrayList<>();
        for (Terminal terminal : net) {
            if (!wiring.isCommon(terminal.part())) {
                changed.add(terminal.part());
            } else if (moved.contains(terminal)) {
                changed.add(terminal);
            }
        }
        return changed;
    }

    private static Set<Terminal> moved(List<PairedWiring> pair) {
        PairedWiring one = pair.get(0);
        PairedWiring other = pair.get(1);
        Set<Terminal> moved = new HashSet<>();
        for (Terminal terminal : one.commonTerminals()) {
            Set<Terminal> studs = one.studs(one.net(terminal));
            boolean sameStuds = studs.equals(other.studs(other.net(terminal)));
            boolean alike = sameStuds && (!studs.isEmpty() || sameBareNet(one, other, terminal));
            if (!alike) {
                moved.add(terminal);
            }
        }
        return moved;
    }

    private static boolean sameBareNet(PairedWiring one, PairedWiring other, Terminal terminal) {
        return bare(one, terminal)
                && Set.copyOf(one.net(terminal)).equals(Set.copyOf(other.net(terminal)));
    }

    private static boolean bare(PairedWiring wiring, Terminal terminal) {
        return wiring.net(terminal).stream().allMatch(t -> wiring.isCommon(t.part()));
    }

    private static Region region(List<Object> together, List<PairedWiring> pair) {
        Map<String, Part> here = new LinkedHashMap<>();
        Map<String, Part> there = new LinkedHashMap<>();
        Set<Terminal> pins = new HashSet<>();
        for (Object one : together) {
            if (one instanceof Terminal pin) {
                pins.add(pin);
            } else {
                pair.get(0).own().stream()
                        .filter(p -> p.id().equals(one))
                        .forEach(p -> here.put(p.id(), p));
                pair.get(1).own().stream()
                        .filter(p -> p.id().equals(one))
                        .forEach(p -> there.put(p.id(), p));
            }
        }
        return new Region(List.copyOf(here.values()), List.copyOf(there.values()), pins);
    }

    /** Which group it is of: that of the most telling part in it. */
    Group group() {
        if (parts().anyMatch(Region::charges)) {
            return Group.CHARGING;
        }
        boolean replaced = !here.isEmpty() && !there.isEmpty();
        boolean inLine = replaced || parts().noneMatch(p -> p.role() == Part.Role.WIRE);
        if (parts().anyMatch(p -> p.logics() > 0) || (inLine && parts().anyMatch(Region::acts))) {
            return Group.SWITCHING;
        }
        boolean ground = parts().anyMatch(p -> p.role() == Part.Role.GROUND);
        boolean onlyMetal =
                parts().allMatch(p -> p.role() == Part.Role.GROUND || p.role() == Part.Role.WIRE);
        return ground && onlyMetal ? Group.GROUNDS : Group.FEEDS;
    }

    private Stream<Part> parts() {
        return Stream.concat(here.stream(), there.stream());
    }

    /** Whether it stores charge or makes it. */
    static boolean charges(Part part) {
        return part.elements().stream().anyMatch(Cell.class::isInstance)
                || part.elements().stream().anyMatch(Generator.class::isInstance);
    }

    /** Whether it protects or switches. */
    static boolean acts(Part part) {
        return !part.levers().isEmpty()
                || part.logics() > 0
                || part.terminals().stream().anyMatch(t -> part.protection(t).isPresent());
    }
}
