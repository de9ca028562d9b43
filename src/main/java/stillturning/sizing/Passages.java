package stillturning.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.Zone;
import stillturning.model.failure.Failure;
import stillturning.model.wiring.Bundles;
import stillturning.parts.Cable;
import stillturning.parts.FailureMode;
import stillturning.parts.Wire;
import stillturning.sizing.result.WirePassage;
import stillturning.sizing.result.WirePassage.Company;
import stillturning.sizing.result.WirePassage.PassageKind;
import stillturning.sizing.result.WirePassage.Surroundings;
import stillturning.sizing.result.WirePassage.Tied;
import stillturning.sizing.result.WireSize;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story.EngineFate;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Where wires pass together: through holes, in bundles, from zone to zone. */
final class Passages {

    /** Key of the failure by which a wire parts. */
    private static final String OPEN = "open";

    private final Subject subject;
    private final Map<String, WireSize> sizes = new LinkedHashMap<>();
    private final Timeline timeline;

    /** Where wires go, before anything of it is measured. */
    private record Way(PassageKind kind, String name, Set<String> zones, Set<String> wires) {}

    /**
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    Passages(Subject subject, List<WireSize> wires) throws UntoldStory {
        this.subject = subject;
        this.timeline = Timeline.quick(subject.study(), subject.candidate());
        wires.forEach(size -> sizes.put(size.wire().id(), size));
    }

    /** Holes and bundles as the study has them, then the crossings in the order of its zones. */
    List<WirePassage> all() {
        List<Way> ways = new ArrayList<>();
        for (Shared shared : subject.fit().ways().shared()) {
            kind(shared.sharing()).ifPresent(kind -> ways.add(said(kind, shared)));
        }
        ways.addAll(crossings());
        return ways.stream().map(this::passage).toList();
    }

    private static Optional<PassageKind> kind(Sharing sharing) {
        return switch (sharing) {
            case HOLE -> Optional.of(PassageKind.HOLE);
            case BUNDLE -> Optional.of(PassageKind.BUNDLE);
            case MOUNT, FIRMWARE, ALIKE -> Optional.empty();
        };
    }

    private Way said(PassageKind kind, Shared shared) {
        Set<String> wires = new LinkedHashSet<>(shared.parts());
        wires.retainAll(sizes.keySet());
        Set<String> zones = new LinkedHashSet<>();
        wires.forEach(wire -> zones.addAll(zones(wire)));
        return new Way(kind, shared.name(), zones, wires);
    }

    private WireSize size(String wire) {
        return Objects.requireNonNull(sizes.get(wire), wire);
    }

    private List<String> zones(String wire) {
        return subject.fit().ways().zones().getOrDefault(wire, size(wire).ends().zones());
    }

    private List<Way> crossings() {
        List<String> order = subject.study().aircraft().zones().stream().map(Zone::name).toList();
        Map<List<String>, Set<String>> crossing = new LinkedHashMap<>();
        for (String wire : sizes.keySet()) {
            List<String> zones = zones(wire);
            for (int i = 1; i < zones.size(); i++) {
                List<String> pair =
                        Stream.of(zones.get(i - 1), zones.get(i))
                                .sorted(Comparator.comparingInt(order::indexOf))
                                .toList();
                crossing.computeIfAbsent(pair, key -> new LinkedHashSet<>()).add(wire);
            }
        }
        return crossing.entrySet().stream()
                .sorted(
                        Comparator.<Map.Entry<List<String>, Set<String>>>comparingInt(
                                        e -> order.indexOf(e.getKey().get(0)))
                                .thenComparingInt(e -> order.indexOf(e.getKey().get(1))))
                .map(
                        e ->
                                new Way(
                                        PassageKind.CROSSING,
                                        String.join(" - ", e.getKey()),
                                        new LinkedHashSet<>(e.getKey()),
                                        e.getValue()))
                .toList();
    }

    private WirePassage passage(Way way) {
        List<String> wires = sizes.keySet().stream().filter(way.wires::contains).toList();
        return new WirePassage(
                way.kind, way.name, wires, tied(wires), surroundings(way), company(wires));
    }

    private Tied tied(List<String> wires) {
        List<Cable> cables = wires.stream().map(id -> size(id).wire().cable()).toList();
        double metres = Bundles.metres(cables);
        double thickest = cables.stream().mapToDouble(Cable::outsideMetres).max().orElseThrow();
        return new Tied(
                metres,
                thickest,
                Bundles.BEND * thickest,
                Bundles.grommetMetres(metres),
                Bundles.holeMetres(metres),
                Bundles.bareHoleMetres(metres));
    }

    private Surroundings surroundings(Way way) {
        List<Zone> there =
                subject.study().aircraft().zones().stream()
                        .filter(zone -> way.zones.contains(zone.name()))
                        .toList();
        OptionalDouble celsius = there.stream().mapToDouble(Zone::celsius).max();
        OptionalDouble insulation =
                way.wires.stream().mapToDouble(w -> size(w).can().insulationCelsius()).min();
        return new Surroundings(
                celsius.orElse(Zone.USUAL_CELSIUS),
                insulation.orElseThrow(),
                there.stream().map(Zone::side).distinct().count() > 1,
                there.stream()
                        .anyMatch(
                                zone ->
                                        zone.side() == Zone.FirewallSide.HOT
                                                || zone.hazards().contains(Zone.Hazard.HEAT)));
    }

    private Company company(List<String> wires) {
        List<String> unguarded = wires.stream().filter(this::unguarded).toList();
        if (wires.size() < 2) {
            return new Company(unguarded, List.of(), Optional.empty());
        }
        List<String> harmless = wires.stream().filter(id -> !ends(List.of(id))).toList();
        if (harmless.size() < 2 || !ends(harmless)) {
            return new Company(unguarded, List.of(), Optional.empty());
        }
        List<String> apart = fewest(harmless);
        return new Company(unguarded, apart, Optional.of(fate(apart).endurance().seconds()));
    }

    /** Whether a short drives more through a wire than it may carry, and nothing opens. */
    private boolean unguarded(String wire) {
        WireSize size = size(wire);
        return size.guard().isEmpty() && subject.survey().shorted(wire).amps() > size.can().amps();
    }

    /** What is left once no more can be left out without the engine going on. */
    private List<String> fewest(List<String> wires) {
        List<String> left = new ArrayList<>(wires);
        for (String wire : wires) {
            List<String> without = left.stream().filter(id -> !id.equals(wire)).toList();
            if (ends(without)) {
                left.remove(wire);
            }
        }
        return left;
    }

    /** Whether the engine ends before the aircraft is down once these wires have parted. */
    private boolean ends(List<String> wires) {
        return !wires.isEmpty() && fate(wires).misses(subject.study().landing());
    }

    private EngineFate fate(List<String> wires) {
        List<Hit> hits = wires.stream().map(id -> new Hit(id, open(size(id).wire()))).toList();
        Failure all = new Failure("wires part", hits, Map.of());
        return timeline.tellAsFar(all, Setting.with(Pilot.PLANNED)).engine();
    }

    private static FailureMode open(Wire wire) {
        return wire.failureModes().stream()
                .filter(mode -> mode.key().equals(OPEN))
                .findFirst()
                .orElseThrow();
    }
}
