package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import stillturning.files.candidate.CheckedStudy.Zones;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.LoadEntry;
import stillturning.files.entry.NeedsText;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.files.goal.PreferencesReader;
import stillturning.files.goal.RequirementsReader;
import stillturning.model.Engine;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.Zone;
import stillturning.yaml.DocumentPlaces;

/** Makes a study's frame of what is written, and tells what does not fit together. */
public final class CheckedStudyReader {

    private static final double SECONDS_PER_MINUTE = 60;
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private final StudyEntry study;
    private final ProblemCollector report;

    public CheckedStudyReader(StudyEntry study, ProblemCollector report) {
        this.study = study;
        this.report = report;
    }

    /**
     * The frame, absent if not even the candidates could be looked at with it.
     *
     * @param candidates names of the candidates' files
     */
    public Optional<CheckedStudy> read(Set<String> candidates) {
        if (!CURRENCY.matcher(study.currency()).matches()) {
            report.problem(
                    "currency",
                    "\"" + study.currency() + "\" is no code of a currency",
                    "write three capital letters, such as EUR");
        }
        distances();
        engineNeeds();
        baseline(candidates);
        List<Phase> phases = phases();
        Optional<Phase> failures = failurePhase(phases);
        List<LoadNeed> loads = new LoadReader(study, report).read();
        Study.Aircraft aircraft =
                new Study.Aircraft(
                        study.nominal().si(),
                        loads,
                        engine(),
                        phases,
                        zones(),
                        study.aMoveTakes().quantity().si());
        return failures.map(
                f -> {
                    Study.Goals goals = goals(f, runUpPhase(phases));
                    return new CheckedStudy(
                            heading(),
                            aircraft,
                            goals,
                            new Zones(study),
                            InstallationReader.laying(study.wiring()),
                            study.loads(),
                            classes());
                });
    }

    private List<Zone> zones() {
        List<Zone> zones = new ArrayList<>();
        study.zones()
                .forEach(
                        (name, entry) ->
                                zones.add(
                                        new Zone(
                                                name,
                                                entry.label().orElse(name),
                                                entry.side(),
                                                Set.copyOf(entry.hazards()),
                                                entry.temperature().quantity().si())));
        return zones;
    }

    private Study.StudyHeading heading() {
        return new Study.StudyHeading(
                study.study(),
                study.about().orElse(""),
                study.invented(),
                study.currency(),
                study.rationale());
    }

    private void distances() {
        for (int i = 0; i < study.distances().size(); i++) {
            StudyEntry.Distance distance = study.distances().get(i);
            String path = DocumentPlaces.item("distances", i);
            zone(DocumentPlaces.under(path, "from"), distance.from());
            zone(DocumentPlaces.under(path, "to"), distance.to());
            if (distance.from().equals(distance.to())) {
                report.problem(
                        DocumentPlaces.under(path, "to"),
                        "the distance leads from a zone to itself",
                        "take it out, and write the zone's \"across\"");
            }
        }
    }

    private void zone(String path, String name) {
        if (!study.zones().containsKey(name)) {
            report.unknown(new Spot(path, 0), "zone", name, study.zones().keySet());
        }
    }

    /** What is said of usual classes, as far as the catalogue knows it. */
    private Map<String, String> classes() {
        Map<String, String> known = new LinkedHashMap<>();
        Catalogue catalogue = Catalogue.shipped();
        study.classes()
                .forEach(
                        (kind, name) -> {
                            String path = DocumentPlaces.under("classes", kind);
                            if (!catalogue.kinds().contains(kind)) {
                                report.unknown(
                                        Spot.atKey(path),
                                        "kind",
                                        kind,
                                        new TreeSet<>(catalogue.kinds()));
                            } else if (!catalogue.classesOf(kind).containsKey(name)) {
                                report.unknown(
                                        new Spot(path, 0),
                                        kind + " class",
                                        name,
                                        catalogue.classesOf(kind).keySet());
                            } else {
                                known.put(kind, name);
                            }
                        });
        return known;
    }

    private void engineNeeds() {
        for (NeedsText.LoadMention mention : study.engine().needs().mentions()) {
            if (!study.loads().containsKey(mention.load())) {
                report.unknown(
                        new Spot("engine.needs", mention.offset()),
                        "load",
                        mention.load(),
                        study.loads().keySet());
            }
        }
    }

    private Engine engine() {
        StudyEntry.EngineEntry engine = study.engine();
        return new Engine(
                engine.needs().logic(),
                engine.tolerates().quantity().si(),
                engine.restartsIn().quantity().si(),
                engine.windmills(),
                engine.windmilling().quantity().si() / SECONDS_PER_MINUTE,
                starting(engine));
    }

    private Engine.EngineStarting starting(StudyEntry.EngineEntry engine) {
        return new Engine.EngineStarting(
                engine.starter().filter(this::isStarter),
                engine.tiredBattery().quantity().si(),
                engine.coldStart().quantity().si(),
                engine.pressesStarterAfter().map(after -> after.quantity().si()));
    }

    private boolean isStarter(String starter) {
        LoadEntry load = study.loads().get(starter);
        if (load == null) {
            report.unknown(new Spot("engine.starter", 0), "load", starter, study.loads().keySet());
        } else if (load.phases().isEmpty()) {
            report.problem(
                    "engine.starter",
                    "the starter \"" + starter + "\" runs in every phase",
                    "name the phase in which the engine is started: phases: [start]");
        }
        return load != null && !load.phases().isEmpty();
    }

    private void baseline(Set<String> candidates) {
        Optional<String> named = study.baseline();
        if (named.isPresent() && !candidates.contains(named.get())) {
            report.unknown(new Spot("baseline", 0), "candidate", named.get(), candidates);
        }
    }

    private List<Phase> phases() {
        Set<String> names = new HashSet<>();
        List<Phase> phases = new ArrayList<>();
        for (int i = 0; i < study.phases().size(); i++) {
            StudyEntry.PhaseEntry phase = study.phases().get(i);
            if (!names.add(phase.name())) {
                report.problem(
                        DocumentPlaces.under(DocumentPlaces.item("phases", i), "name"),
                        "a phase \"" + phase.name() + "\" is already there",
                        "give each phase a name of its own");
            }
            phases.add(
                    new Phase(
                            phase.name(),
                            phase.lasts().si(),
                            phase.alternator().quantity().si() / SECONDS_PER_MINUTE,
                            phase.engineOff()));
            if (phase.engineOff()
                    && !study.engine().windmills()
                    && study.engine().starter().isEmpty()) {
                report.problem(
                        DocumentPlaces.under(DocumentPlaces.item("phases", i), "engine-off"),
                        "nothing can start the engine again after \"" + phase.name() + "\"",
                        "name the engine's starter");
            }
        }
        if (phases.isEmpty()) {
            report.problem("phases", "no phase is written", "write at least one");
        }
        return phases;
    }

    /** The phase in which failures happen; another where that cannot be told. */
    private Optional<Phase> failurePhase(List<Phase> phases) {
        return phase("failures-in", study.failuresIn(), phases)
                .or(() -> phases.stream().findFirst());
    }

    private Optional<Phase> phase(String key, String name, List<Phase> phases) {
        Optional<Phase> named = phases.stream().filter(p -> p.name().equals(name)).findFirst();
        if (named.isEmpty()) {
            report.unknown(
                    new Spot(key, 0), "phase", name, phases.stream().map(Phase::name).toList());
        }
        return named;
    }

    /** The phase in which checks are made; the first in which no starter runs if nobody says. */
    private Phase runUpPhase(List<Phase> phases) {
        return study.runUpIn()
                .flatMap(name -> phase("run-up-in", name, phases))
                .or(() -> phases.stream().filter(p -> !cranked(p) && !p.engineOff()).findFirst())
                .orElseGet(() -> phases.get(0));
    }

    private boolean cranked(Phase phase) {
        return study.engine()
                .starter()
                .flatMap(starter -> Optional.ofNullable(study.loads().get(starter)))
                .filter(s -> s.phases().isEmpty() || s.phases().contains(phase.name()))
                .isPresent();
    }

    private Study.Goals goals(Phase failures, Phase runUp) {
        return new Study.Goals(
                failures,
                study.timeToLand().si(),
                new RequirementsReader(study, report).read(),
                new PreferencesReader(study, report).read(),
                study.baseline(),
                cases(),
                runUp,
                study.timeCountsFrom());
    }

    private List<String> cases() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < study.cases().size(); i++) {
            String said = study.cases().get(i);
            if (!names.add(said.strip().toLowerCase(Locale.ROOT))) {
                report.problem(
                        DocumentPlaces.item("cases", i),
                        "the case \"" + said + "\" is already there",
                        "take it out");
            }
        }
        return study.cases();
    }
}
