package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.Study.Aircraft;
import stillturning.model.Zone;
import stillturning.model.Zone.Hazard;
import stillturning.parts.Part;
import stillturning.parts.Part.Role;
import stillturning.structure.SharedPlaces.CommonPlace;
import stillturning.structure.SharedPlaces.CommonPlaceKind;

/** Every place of an aircraft in which parts can suffer together, and the parts there. */
final class PartPlaces {

    private final Wiring wiring;
    private final Odds odds;
    private final Map<String, Zone> zones = new LinkedHashMap<>();
    private final List<Peopled> all = new ArrayList<>();

    /**
     * A place with its parts.
     *
     * @param zone name of the zone that it is; empty for every other kind
     */
    record Peopled(CommonPlace place, Optional<String> zone, BitSet parts) {}

    private record Crossing(String one, String other) {}

    PartPlaces(Aircraft aircraft, Wiring wiring, Odds odds) {
        this.wiring = wiring;
        this.odds = odds;
        aircraft.zones().forEach(zone -> zones.put(zone.name(), zone));
        addZones();
        addCrossings();
        addShared();
        addParts();
    }

    /** Zones first, then by kind; within one kind in the order of study and candidate. */
    List<Peopled> all() {
        return all;
    }

    /** Zones that a part is in: those that a wire passes, from its end a to its end b. */
    List<String> zonesOf(int part) {
        String own = wiring.parts.get(part).tag().zone();
        return odds.routes().getOrDefault(wiring.id(part), List.of(own));
    }

    private void addZones() {
        Set<String> names = new LinkedHashSet<>(zones.keySet());
        for (int part = 0; part < wiring.parts.size(); part++) {
            names.addAll(zonesOf(part));
        }
        for (String name : names) {
            BitSet parts = new BitSet();
            for (int part = 0; part < wiring.parts.size(); part++) {
                parts.set(part, zonesOf(part).contains(name));
            }
            add(CommonPlaceKind.ZONE, label(name), Optional.of(name), parts, List.of(name));
        }
    }

    private void addCrossings() {
        Map<Crossing, BitSet> crossings = new LinkedHashMap<>();
        for (int part = 0; part < wiring.parts.size(); part++) {
            List<String> passed = zonesOf(part);
            for (int i = 1; i < passed.size(); i++) {
                if (!passed.get(i).equals(passed.get(i - 1))) {
                    crossings
                            .computeIfAbsent(
                                    crossing(passed.get(i - 1), passed.get(i)), c -> new BitSet())
                            .set(part);
                }
            }
        }
        crossings.forEach(
                (c, parts) ->
                        add(
                                CommonPlaceKind.CROSSING,
                                label(c.one) + " to " + label(c.other),
                                Optional.empty(),
                                parts,
                                List.of(c.one, c.other)));
    }

    /** The same from either side: as the study lists the zones. */
    private Crossing crossing(String from, String to) {
        List<String> order = List.copyOf(zones.keySet());
        Comparator<String> asListed =
                Comparator.<String>comparingInt(order::indexOf)
                        .thenComparing(Comparator.naturalOrder());
        return asListed.compare(from, to) <= 0 ? new Crossing(from, to) : new Crossing(to, from);
    }

    private void addShared() {
        Map<Sharing, CommonPlaceKind> kinds =
                Map.of(
                        Sharing.HOLE, CommonPlaceKind.HOLE,
                        Sharing.BUNDLE, CommonPlaceKind.BUNDLE,
                        Sharing.MOUNT, CommonPlaceKind.MOUNT);
        odds.shared().stream()
                .filter(shared -> kinds.containsKey(shared.sharing()))
                .sorted(Comparator.comparing(Shared::sharing))
                .forEach(
                        shared -> {
                            BitSet parts = new BitSet();
                            shared.parts().forEach(id -> wiring.part(id).ifPresent(parts::set));
                            CommonPlaceKind kind =
                                    kinds.getOrDefault(shared.sharing(), CommonPlaceKind.BUNDLE);
                            add(kind, shared.name(), Optional.empty(), parts, zonesOfAll(parts));
                        });
    }

    private void addParts() {
        for (CommonPlaceKind kind : List.of(CommonPlaceKind.CONNECTOR, CommonPlaceKind.GROUND)) {
            for (int i = 0; i < wiring.parts.size(); i++) {
                Part part = wiring.parts.get(i);
                if (part.role()
                        == (kind == CommonPlaceKind.CONNECTOR ? Role.CONNECTOR : Role.GROUND)) {
                    BitSet alone = new BitSet();
                    alone.set(i);
                    add(kind, part.id(), Optional.empty(), alone, zonesOf(i));
                }
            }
        }
    }

    private List<String> zonesOfAll(BitSet parts) {
        return parts.stream().boxed().flatMap(p -> zonesOf(p).stream()).distinct().toList();
    }

    private void add(
            CommonPlaceKind kind,
            String name,
            Optional<String> zone,
            BitSet parts,
            List<String> in) {
        Set<Hazard> hazards = new TreeSet<>();
        boolean hot = false;
        for (String each : in) {
            Optional<Zone> known = Optional.ofNullable(zones.get(each));
            known.ifPresent(z -> hazards.addAll(z.hazards()));
            hot |= known.filter(z -> z.side() == Zone.FirewallSide.HOT).isPresent();
        }
        all.add(new Peopled(new CommonPlace(kind, name, hot, List.copyOf(hazards)), zone, parts));
    }

    private String label(String zone) {
        return Optional.ofNullable(zones.get(zone)).map(Zone::label).orElse(zone);
    }
}
