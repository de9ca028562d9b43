package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Load;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;

/** A failure that nobody sees asks for a warning; one that is seen does not. */
class MissingWarningsTest {

    private static Bench flying(double ampHours) {
        return new Bench()
                .part(Shelf.lead("battery", ampHours, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static List<MissingWarnings.MissingWarning> missing(Bench bench) {
        Study study = bench.study();
        Study.Goals goals =
                new Study.Goals(
                        study.goals().failurePhase(),
                        study.goals().enoughSeconds(),
                        List.of(),
                        List.of(new Study.Weight(CriterionName.WEIGHT, 1)),
                        Optional.empty(),
                        List.of());
        Study asked =
                new Study(study.id(), study.heading(), study.aircraft(), goals, study.candidates());
        return MissingWarnings.of(Assess.of(asked).appraisals().get(0));
    }

    @Test
    void aBatteryThatRunsDownUnseenAsksForAWarningOfLowVoltage() {
        MissingWarnings.MissingWarning first = missing(flying(4)).get(0);
        // between 14.2 V charging and what a battery at work gives
        assertTrue(first.warning().startsWith("low voltage at bus, below 13."), first.warning());
        assertTrue(first.failures().contains("alternator: no output"), first.toString());
    }

    /**
     * The computer and its battery hang on a strap. Without it the alternator carries nothing, and
     * its bus rises to the set point, as it does in normal flight when loads are off.
     */
    @Test
    void noWarningOfHighVoltageIsAskedForBelowWhatTheRegulatorHolds() {
        Load computer =
                new Load(
                        Bench.tag("computer"),
                        new Demand(DemandKind.CONSTANT_CURRENT, 10, 12),
                        Bench.HARDY,
                        List.of("plus"));
        Bench strapped =
                new Bench()
                        .part(Shelf.lead("battery", 4, 0.02, 1))
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .wire("lead", 3, 0.06)
                        .join("alternator", "output", "lead", "a")
                        .join("lead", "b", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .join("battery", "plus", "bus", "bar")
                        .loadWithoutReturn(computer)
                        .join("computer", "plus", "bus", "bar")
                        .join("computer", "minus", "battery", "minus")
                        .wire("strap", 1, 0.001)
                        .join("computer", "minus", "strap", "a")
                        .join("strap", "b", "ground", "stud")
                        .engine(new EngineLogic.One("computer"), true);
        List<String> asked =
                missing(strapped).stream()
                        .filter(m -> m.failures().contains("strap: open"))
                        .map(MissingWarnings.MissingWarning::warning)
                        .toList();
        assertEquals(List.of("at the part itself, since no bus shows it in time"), asked);
    }

    /** Four hours of battery, an hour of flight: it has landed, though nobody saw anything. */
    @Test
    void whatOutlastsTheFlightAsksForNothing() {
        assertTrue(
                missing(flying(20)).stream()
                        .noneMatch(m -> m.failures().contains("alternator: no output")));
    }

    @Test
    void whatALampShowsAsksForNothing() {
        Bench seen = flying(4).cue("light", new Cue.AlternatorOut("alternator"));
        assertEquals(
                List.of(),
                missing(seen).stream()
                        .flatMap(m -> m.failures().stream())
                        .filter(f -> f.equals("alternator: no output"))
                        .toList());
    }
}
