package stillturning.dossier;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.assess.verdict.Lazy;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.model.failure.FailureWords;
import stillturning.model.wiring.MetalLines;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** What the failures of some candidates are called, in the many ways in which a person says it. */
public final class NamedFailures {

    private static final int NEAREST = 5;
    private static final String OPEN = "open";

    private final List<Candidate> candidates;
    private final Lazy<List<Named<Meant>>> known = Lazy.by(this::called);

    public NamedFailures(Collection<Candidate> candidates) {
        this.candidates = List.copyOf(candidates);
    }

    /**
     * The failures that each of a study's cases means in a candidate, in the study's order; none if
     * empty. Where words fit several best, all of them are meant, so that nothing is left out.
     */
    public static Map<String, List<Failure>> cases(Study study, Candidate candidate) {
        NamedFailures names = new NamedFailures(List.of(candidate));
        Map<String, List<Failure>> meant = new LinkedHashMap<>();
        study.goals().cases().forEach(said -> meant.put(said, names.all(said)));
        return meant;
    }

    /** A part or operating case, and the failures of it that are meant; all of them if empty. */
    public record Meant(String part, String failure) {
        /** Any failure of the part. */
        public static final String ANY = "";

        /** Whether a failure of the part is meant. */
        public boolean holds(Failure of) {
            return failure.equals(ANY) || failure.equals(of.name());
        }

        /** In words. */
        public String words() {
            return failure.equals(ANY) ? part : failure;
        }
    }

    /** Every failure that the words fit best, whatever parts they are of; empty if none. */
    public List<Failure> all(String said) {
        List<Meant> best = LooseNames.best(said, names());
        return candidates.stream()
                .flatMap(
                        candidate ->
                                best.stream()
                                        .flatMap(
                                                meant ->
                                                        failures(candidate, meant.part()).stream()
                                                                .filter(meant::holds)))
                .distinct()
                .toList();
    }

    /** Parts and operating cases that share most words with what was said, best first. */
    public List<String> nearest(String said) {
        return LooseNames.nearest(said, names()).stream()
                .map(Meant::words)
                .distinct()
                .limit(NEAREST)
                .toList();
    }

    /** Everything that can be made to happen in a candidate. */
    public static List<Failure> everything(Candidate candidate) {
        List<Failure> all = new ArrayList<>(FailureCatalogue.singlesOf(candidate));
        all.addAll(FailureCatalogue.deadLampsOf(candidate));
        all.addAll(FailureCatalogue.operatingCasesOf(candidate));
        FailureCatalogue.omissionsOf(candidate).forEach(left -> all.add(left.failure()));
        all.add(FailureCatalogue.chargingLost(candidate));
        return all;
    }

    /** Failures of a part, a lamp, a switch left wrong or an operating case of a candidate. */
    public static List<Failure> failures(Candidate candidate, String part) {
        if (part.equals(FailureCatalogue.CHARGING_LOST)) {
            return List.of(FailureCatalogue.chargingLost(candidate));
        }
        if (part.equals(FailureCatalogue.MASTER_OFF)) {
            return FailureCatalogue.operatingCasesOf(candidate);
        }
        return Stream.of(
                        FailureCatalogue.singlesOf(candidate).stream()
                                .filter(failure -> failure.hits().get(0).part().equals(part)),
                        FailureCatalogue.deadLampsOf(candidate).stream()
                                .filter(failure -> failure.dark().contains(part)),
                        FailureCatalogue.omissionsOf(candidate).stream()
                                .map(Misplaced::failure)
                                .filter(failure -> failure.name().equals(part)))
                .flatMap(failures -> failures)
                .toList();
    }

    /** Everything that can be meant, with what it is called. */
    public List<Named<Meant>> names() {
        return known.get();
    }

    private List<Named<Meant>> called() {
        Map<Meant, Set<LooseName>> names = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            candidate.parts().forEach(part -> add(names, part));
            FailureCatalogue.deadLampsOf(candidate)
                    .forEach(dead -> dead.dark().forEach(cue -> addLamp(names, cue, dead)));
            FailureCatalogue.omissionsOf(candidate)
                    .forEach(left -> addLeft(names, candidate, left));
            addWaysToLoseBatteries(names, candidate);
        }
        List<Named<Meant>> all = new ArrayList<>();
        all.add(named(FailureCatalogue.CHARGING_LOST, "charging lost", "no charging"));
        if (candidates.stream().anyMatch(c -> !c.cockpit().masterOff().isEmpty())) {
            all.add(named(FailureCatalogue.MASTER_OFF, "master off", FailureCatalogue.MASTER_OFF));
        }
        names.forEach((meant, called) -> all.add(new Named<>(meant, List.copyOf(called))));
        return List.copyOf(all);
    }

    /** A battery is open where anything in the line to it is: "battery open" means each of them. */
    private static void addWaysToLoseBatteries(
            Map<Meant, Set<LooseName>> names, Candidate candidate) {
        MetalLines lines = new MetalLines(candidate, candidate.circuit());
        List<Part> batteries =
                candidate.parts().stream()
                        .filter(p -> p.elements().stream().anyMatch(Cell.class::isInstance))
                        .toList();
        for (Part battery : batteries) {
            candidate
                    .wires()
                    .map(wire -> lines.of(wire.id()))
                    .filter(line -> line.passes(battery.id()))
                    .flatMap(line -> line.links().stream())
                    .map(Circuit.Placed::part)
                    .distinct()
                    .flatMap(id -> candidate.part(id).stream())
                    .forEach(part -> addOpen(names, battery, part));
        }
    }

    private static void addOpen(Map<Meant, Set<LooseName>> names, Part battery, Part part) {
        part.failureModes().stream()
                .filter(mode -> FailureWords.of(mode).contains(OPEN))
                .map(mode -> Failure.of(new Candidate.Hit(part.id(), mode)).name())
                .map(failure -> new Meant(part.id(), failure))
                .forEach(
                        meant ->
                                names.computeIfAbsent(meant, m -> new LinkedHashSet<>())
                                        .addAll(
                                                List.of(
                                                        new LooseName(battery.id(), OPEN),
                                                        new LooseName(
                                                                battery.tag().label(), OPEN))));
    }

    private static Named<Meant> named(String operatingCase, String... names) {
        return new Named<>(
                new Meant(operatingCase, Meant.ANY), Stream.of(names).map(LooseName::of).toList());
    }

    private static void addLamp(Map<Meant, Set<LooseName>> names, String cue, Failure dead) {
        names.computeIfAbsent(new Meant(cue, dead.name()), m -> new LinkedHashSet<>())
                .addAll(
                        List.of(
                                new LooseName(cue, Failure.DEAD_LAMP),
                                new LooseName(cue, "lamp dead"),
                                new LooseName(cue, "light dead")));
    }

    private static void addLeft(
            Map<Meant, Set<LooseName>> names, Candidate candidate, Misplaced left) {
        String how = "left " + left.position();
        Set<LooseName> called =
                names.computeIfAbsent(
                        new Meant(left.name(), Meant.ANY), m -> new LinkedHashSet<>());
        // "left" has to be said: "master off" is the drill
        called.add(LooseName.of(left.name()));
        left.line().ifPresent(line -> called.add(LooseName.of("all left as in " + line)));
        called.add(LooseName.of(left.lever() + " " + how));
        candidate
                .part(left.lever())
                .ifPresent(part -> called.add(LooseName.of(part.tag().label() + " " + how)));
    }

    private static List<LooseName> names(String called, FailureMode mode) {
        return FailureWords.of(mode).stream().map(words -> new LooseName(called, words)).toList();
    }

    private static void add(Map<Meant, Set<LooseName>> names, Part part) {
        for (String called : List.of(part.id(), part.tag().label())) {
            names.computeIfAbsent(new Meant(part.id(), Meant.ANY), m -> new LinkedHashSet<>())
                    .add(LooseName.of(called));
            for (FailureMode mode : part.failureModes()) {
                String failure = Failure.of(new Candidate.Hit(part.id(), mode)).name();
                names.computeIfAbsent(new Meant(part.id(), failure), m -> new LinkedHashSet<>())
                        .addAll(names(called, mode));
            }
        }
    }
}
