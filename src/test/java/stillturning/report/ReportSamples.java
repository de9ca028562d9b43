package stillturning.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.bench.Bench;
import stillturning.dossier.PairWork;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.goal.CriterionName;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.report.html.Sources;
import stillturning.report.html.Sources.SourceNote;
import stillturning.report.pair.PairQuestion;
import stillturning.story.UntoldStory;

/** A small invented study with two candidates, one on a single bus and one with a second feed. */
public final class ReportSamples {

    private static final EngineLogic ENGINE =
            EngineLogic.allOf(List.of(new EngineLogic.One("coils"), new EngineLogic.One("pump")));

    private ReportSamples() {}

    public static Assessment assessment() {
        return Assess.of(study("Two benches", "Which one first?"));
    }

    /** The first two held against each other. */
    public static PairQuestion firstTwo(Assessment assessment) {
        try {
            return PairWork.ofFirstTwo(assessment).orElseThrow().done(done -> {});
        } catch (UntoldStory e) {
            throw new AssertionError(e);
        }
    }

    public static Study study(String title, String about) {
        Candidate one = candidate("one-bus", "One bus for all", oneBus());
        Candidate two = candidate("engine-bus", "A bus for the engine", engineBus());
        Study bench = oneBus().study();
        return new Study(
                "benches",
                new Study.StudyHeading(title, about, true, "EUR"),
                bench.aircraft(),
                new Study.Goals(
                        bench.goals().failurePhase(),
                        bench.goals().enoughSeconds(),
                        List.of(
                                new Requirement.NoSingleFailureStopsEngine(),
                                new Requirement.RunsWithMasterOff(),
                                new Requirement.EnduranceWithoutCharging(1800)),
                        List.of(
                                new Study.Weight(CriterionName.ENGINE_STOPS, 5),
                                new Study.Weight(CriterionName.ENDURANCE, 2),
                                new Study.Weight(CriterionName.WEIGHT, 2),
                                new Study.Weight(CriterionName.COMPLEXITY, 1)),
                        Optional.of("one-bus"),
                        List.of("charging lost", "engine diode open")),
                List.of(one, two));
    }

    public static Sources sources() {
        return new Sources(
                "0123456789abcdef",
                List.of(
                        new SourceNote("study.yaml", "loads.pump.draws", "5.5 A", "guess", ""),
                        new SourceNote(
                                "one-bus.yaml",
                                "parts.battery.capacity",
                                "12 Ah",
                                "data sheet",
                                "20 h rate"),
                        new SourceNote(
                                "one-bus.yaml",
                                "parts.battery.resistance",
                                "12 mohm",
                                "catalogue",
                                "")));
    }

    private static Candidate candidate(String id, String title, Bench bench) {
        Candidate candidate = bench.candidate();
        Cockpit cockpit = candidate.cockpit();
        Map<String, String> masterOff = Map.of("master", "off");
        return new Candidate(
                id,
                title,
                "Invented for a test.",
                candidate.parts(),
                candidate.joins(),
                new Cockpit(cockpit.flight(), masterOff, cockpit.cues(), cockpit.procedures()));
    }

    private static Bench oneBus() {
        return common().breaker("coils-breaker", 5)
                .breaker("pump-breaker", 10)
                .join("main-bus", "bar", "coils-breaker", "in")
                .join("main-bus", "bar", "pump-breaker", "in");
    }

    private static Bench engineBus() {
        return common().bus("engine-bus", "feed-1", "feed-2")
                .diode("engine-diode")
                .wire("engine-wire", 1.5, 0.02)
                .closedSwitch("engine-feed", "off")
                .join("main-bus", "bar", "engine-wire", "a")
                .join("engine-wire", "b", "engine-diode", "in")
                .join("engine-diode", "out", "engine-bus", "feed-1")
                .join("battery", "plus", "engine-feed", "in")
                .join("engine-feed", "out", "engine-bus", "feed-2")
                .cue("engine-quiet", new Cue.EngineStops())
                .procedure("standby-feed", "engine-quiet", 10, Map.of("engine-feed", "on"), "radio")
                .breaker("coils-breaker", 5)
                .breaker("pump-breaker", 10)
                .join("engine-bus", "bar", "coils-breaker", "in")
                .join("engine-bus", "bar", "pump-breaker", "in");
    }

    /** Everything that the two have in common. */
    private static Bench common() {
        return new Bench()
                .engine(ENGINE, true)
                .battery("battery", 12, 0.012, 1.2)
                .alternator("alternator", 45)
                .contactor("master-contactor")
                .closedSwitch("master", "on")
                .bus("main-bus", "feed-1", "feed-2")
                .breaker("radio-breaker", 5)
                .breaker("field-breaker", 5)
                .load("coils", DemandKind.CONSTANT_POWER, 3.5, Bench.HARDY)
                .load("pump", DemandKind.CONSTANT_POWER, 5.5, Bench.HARDY)
                .load("radio", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .join("battery", "plus", "master-contactor", "in")
                .join("master-contactor", "in", "master-contactor", "coil-plus")
                .join("master-contactor", "coil-minus", "master", "in")
                .join("master", "out", "ground", "stud")
                .join("master-contactor", "out", "main-bus", "feed-1")
                .join("alternator", "output", "main-bus", "feed-2")
                .join("main-bus", "bar", "field-breaker", "in")
                .join("field-breaker", "out", "alternator", "field")
                .join("main-bus", "bar", "radio-breaker", "in")
                .join("radio-breaker", "out", "radio", "plus")
                .join("coils-breaker", "out", "coils", "plus")
                .join("pump-breaker", "out", "pump", "plus")
                .cue("low-voltage", new Cue.LowVolts(new Terminal("main-bus", "bar"), 13, 3))
                .procedure("charging-lost", "low-voltage", 60, Map.of(), "radio");
    }
}
