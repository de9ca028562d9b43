package stillturning.model.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances;
import stillturning.model.Chances.Beta;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Rate;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.EngineLogic;
import stillturning.model.Join;
import stillturning.model.Study.Aircraft;
import stillturning.model.Zone;
import stillturning.model.Zone.Hazard;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.model.failure.JointEvent.Ending;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;

/** All events that fail several of a candidate's parts together. */
public final class CommonCauses {

    /** Key of the failure by which a battery is worn. */
    private static final String WORN = "capacity-lost";

    /** Share of worn batteries that have a worn neighbour of the same age. A guess. */
    private static final double SAME_AGE = 0.1;

    private final Aircraft aircraft;
    private final Candidate candidate;
    private final Chances chances;
    private final Odds odds;

    private CommonCauses(Aircraft aircraft, Candidate candidate, Chances chances) {
        this.aircraft = aircraft;
        this.candidate = candidate;
        this.chances = chances;
        this.odds = chances.odds(candidate.id());
    }

    /**
     * Every hazard of every zone, then everything that parts share, in the order of the study and
     * of the candidate; only what fails two parts at least. Where it is open how an event ends,
     * each way is a cause, and the event's rate is divided evenly among them, which is a guess.
     *
     * @throws IllegalArgumentException if something is shared by a part that the candidate lacks
     */
    public static List<Cause> of(Aircraft aircraft, Candidate candidate, Chances chances) {
        CommonCauses causes = new CommonCauses(aircraft, candidate, chances);
        List<Cause> all = new ArrayList<>();
        aircraft.zones().forEach(zone -> all.addAll(causes.inZone(zone)));
        causes.odds.shared().forEach(shared -> all.addAll(causes.ofShared(shared)));
        all.addAll(causes.wornTogether());
        return List.copyOf(all);
    }

    /**
     * Batteries are bought together, charged together and age together: proposed wherever the
     * builder does not say himself what they share ({@code alike}).
     */
    private List<Cause> wornTogether() {
        List<String> batteries =
                candidate.parts().stream()
                        .filter(p -> p.elements().stream().anyMatch(Cell.class::isInstance))
                        .map(Part::id)
                        .toList();
        boolean said =
                odds.shared().stream()
                        .filter(shared -> shared.sharing() == Sharing.ALIKE)
                        .anyMatch(shared -> shared.parts().containsAll(batteries));
        if (batteries.size() < 2 || said) {
            return List.of();
        }
        Beta beta = new Beta(SAME_AGE, "proposed where nobody says what they share: a guess");
        Shared age =
                new Shared(Sharing.ALIKE, "age of the batteries", batteries, Optional.of(beta));
        return ofShared(age).stream()
                .filter(
                        cause ->
                                cause.failure().hits().stream()
                                        .allMatch(hit -> hit.mode().key().equals(WORN)))
                .toList();
    }

    private List<Cause> inZone(Zone zone) {
        List<Cause> all = new ArrayList<>();
        Set<String> spared = spared(zone);
        List<Part> there =
                candidate.parts().stream()
                        .filter(p -> isIn(zone, p) && !spared.contains(p.id()))
                        .toList();
        for (Hazard hazard : Hazard.values()) {
            if (zone.hazards().contains(hazard)) {
                String name = hazard.name().toLowerCase(Locale.ROOT) + " in " + zone.name();
                Optional<Rate> rate = Optional.ofNullable(chances.events().get(hazard));
                all.addAll(
                        new JointEvent(CauseKind.ZONE, name, rate)
                                .endingIn(ends(hazard), there, sparedInWords(spared)));
            }
        }
        return all;
    }

    private static List<Ending> ends(Hazard hazard) {
        return switch (hazard) {
            case HEAT ->
                    List.of(
                            new Ending(
                                    Damage.SCORCHED,
                                    "",
                                    "insulation melts, wires touch metal, devices fail"));
            case WATER -> List.of(new Ending(Damage.SOAKED, "", "what has bare terminals fails"));
            case CHAFE -> List.of(Ending.APART, Ending.BARE);
            case IMPACT ->
                    List.of(new Ending(Damage.TORN, ": all open", "all is torn off"), Ending.BARE);
        };
    }

    private boolean isIn(Zone zone, Part part) {
        return part.role() == Part.Role.WIRE
                ? odds.routes()
                        .getOrDefault(part.id(), List.of(part.tag().zone()))
                        .contains(zone.name())
                : part.tag().zone().equals(zone.name());
    }

    /**
     * The engine's own loads in a zone, if the engine stops without them however they are supplied,
     * and the wires that end on them: no architecture could save these, so none is charged with
     * them.
     */
    private Set<String> spared(Zone zone) {
        EngineLogic needs = aircraft.engine().logic();
        Set<String> loads =
                needs.loads().stream()
                        .filter(id -> candidate.part(id).filter(p -> isIn(zone, p)).isPresent())
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        if (needs.runsOn(load -> !loads.contains(load))) {
            return Set.of();
        }
        Set<String> spared = new LinkedHashSet<>(loads);
        for (Join join : candidate.joins()) {
            leadOf(loads, join.one().part(), join.other().part()).ifPresent(spared::add);
            leadOf(loads, join.other().part(), join.one().part()).ifPresent(spared::add);
        }
        return spared;
    }

    private Optional<String> leadOf(Set<String> loads, String load, String other) {
        boolean lead =
                loads.contains(load)
                        && candidate
                                .part(other)
                                .filter(p -> p.role() == Part.Role.WIRE)
                                .isPresent();
        return lead ? Optional.of(other) : Optional.empty();
    }

    private String sparedInWords(Set<String> spared) {
        List<String> loads =
                spared.stream()
                        .filter(id -> candidate.part(id).orElseThrow().role() == Part.Role.LOAD)
                        .toList();
        return loads.isEmpty()
                ? ""
                : "; left out are "
                        + String.join(", ", loads)
                        + " with their own leads, since without them the engine stops however it is"
                        + " wired";
    }

    private List<Cause> ofShared(Shared shared) {
        List<Part> parts = shared.parts().stream().map(id -> part(shared, id)).toList();
        String of = shared.sharing().name().toLowerCase(Locale.ROOT);
        String name = of + " " + shared.name();
        Optional<Rate> rate = Optional.ofNullable(chances.sharing().get(shared.sharing()));
        return switch (shared.sharing()) {
            case HOLE -> worn(new JointEvent(CauseKind.HOLE, name, rate), parts);
            case BUNDLE -> worn(new JointEvent(CauseKind.BUNDLE, name, rate), parts);
            case MOUNT ->
                    new JointEvent(CauseKind.MOUNT, name, rate)
                            .endingIn(
                                    List.of(new Ending(Damage.TORN, "", "all on it is torn off")),
                                    parts,
                                    "");
            case FIRMWARE -> hung(shared, name, parts);
            case ALIKE -> alike(shared, name, parts);
        };
    }

    private static List<Cause> worn(JointEvent event, List<Part> wires) {
        return event.endingIn(List.of(Ending.APART, Ending.BARE), wires, "");
    }

    private Part part(Shared shared, String id) {
        return candidate
                .part(id)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        shared.name()
                                                + " is shared by "
                                                + id
                                                + ", which is not in "
                                                + candidate.id()));
    }

    private List<Cause> hung(Shared shared, String name, List<Part> parts) {
        List<Hit> hits = parts.stream().flatMap(p -> JointEvent.hits(Damage.HUNG, p)).toList();
        return new JointEvent(CauseKind.FIRMWARE, name, byBeta(shared, hits))
                .failing(hits, name + ": the same program stops everywhere").stream().toList();
    }

    private List<Cause> alike(Shared shared, String name, List<Part> parts) {
        List<Cause> causes = new ArrayList<>();
        for (FailureMode mode : parts.get(0).failureModes()) {
            List<Hit> hits =
                    parts.stream()
                            .flatMap(p -> p.failureModes().stream().map(m -> new Hit(p.id(), m)))
                            .filter(hit -> hit.mode().name().equals(mode.name()))
                            .toList();
            if (hits.size() == parts.size()) {
                String named = name + ": " + mode.name();
                new JointEvent(CauseKind.ALIKE, named, byBeta(shared, hits))
                        .failing(hits, named + ", since they are of one make")
                        .ifPresent(causes::add);
            }
        }
        return causes;
    }

    /** The beta factor of the unit that fails most often; empty where no rate is known. */
    private Optional<Rate> byBeta(Shared shared, List<Hit> hits) {
        double share = shared.beta().orElseThrow().share();
        String source = shared.beta().orElseThrow().source();
        return hits.stream()
                .map(Mode::of)
                .flatMap(mode -> Optional.ofNullable(odds.rates().get(mode)).stream())
                .max(Comparator.comparingDouble(Rate::median))
                .map(r -> r.times(share, "beta factor (" + source + ") of " + r.source()));
    }
}
