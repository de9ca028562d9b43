package stillturning.assess.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.CountsFrom;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;

/** One hand-made candidate for each rung of the ladder. */
class JudgeTest {

    private static Verdict verdict(Bench bench, String failure) throws UntoldStory {
        return Assess.one(bench.study(), bench.candidate(), bench.failure(failure));
    }

    /** A battery that the alternator keeps up, and a computer on the bus. */
    private static Bench flying(double ampHours, double amps) {
        return new Bench()
                .part(Shelf.lead("battery", ampHours, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus", "feed")
                .join("battery", "plus", "bus", "feed")
                .join("alternator", "output", "bus", "feed")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, amps, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    /** The same with a switch that the pilot can close past the bus's stud. */
    private static Bench withOtherFeed(double seconds) {
        return flying(20, 5)
                .closedSwitch("alternate", "off")
                .join("battery", "plus", "alternate", "in")
                .join("alternate", "out", "bus", "bar")
                .cue("silence", new Cue.EngineStops())
                .procedure("alternate feed", "silence", seconds, Map.of("alternate", "on"));
    }

    @Test
    void anEngineThatNothingFeedsAnyMoreIsLost() throws UntoldStory {
        Verdict verdict = verdict(flying(20, 5), "bus: feed open");
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertEquals(List.of("computer"), verdict.losses().engineLoads());
        assertTrue(!verdict.engineOwn());
    }

    @Test
    void anEngineThatRunsOnForLessThanEnoughIsLost() throws UntoldStory {
        // 4 Ah at 10 A: 24 minutes of the 30 that are enough
        Verdict verdict = verdict(flying(4, 10), "alternator: regulator open");
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertEquals(1440.32, verdict.planned().engine().endurance().seconds(), 1e-3);
    }

    @Test
    void anEngineThatStopsAndThatThePilotBringsBackStopsUntilHeActs() throws UntoldStory {
        Verdict verdict = verdict(withOtherFeed(10), "bus: feed open");
        assertEquals(Outcome.STOPS_UNTIL_PILOT_ACTS, verdict.outcome());
        assertEquals(0.32, verdict.actBySeconds().orElse(-1.0), 1e-9);
        assertTrue(verdict.outcome().needsPilot());
    }

    private static Bench shedding(double after) {
        return flying(5, 5)
                .load("lights", DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                .join("lights", "plus", "bus", "bar")
                .cue("alternator light", new Cue.AlternatorOut("alternator"))
                .procedure("shed", "alternator light", after, Map.of(), "lights");
    }

    @Test
    void anEngineThatRunsOnOnlyIfThePilotShedsRunsOnUnlessHeActsInTime() throws UntoldStory {
        // 5 Ah at 15 A are 20 minutes, at 5 A an hour
        Verdict verdict = verdict(shedding(60), "alternator: regulator open");
        assertEquals(Outcome.STOPS_UNLESS_PILOT_ACTS, verdict.outcome());
        assertEquals(1200.32, verdict.actBySeconds().orElse(-1.0), 1e-3);
        // the end of the battery, after more than enough, is no stop that he ended
        assertEquals(1, verdict.planned().engine().stops());
    }

    @Test
    void timeCountsFromTheFirstSignThatThePilotCanHave() throws UntoldStory {
        // 4.5 Ah at 5 A are 54 min; the lamp comes on when the bus is below 11 V, near the very end
        Bench unseen =
                flying(4.5, 5).cue("low", new Cue.LowVolts(new Terminal("bus", "bar"), 11, 1));
        Verdict late = verdict(unseen, "alternator: regulator open");
        double end = late.planned().engine().endurance().seconds();
        assertEquals(3240, end, 15);
        double sign = late.planned().engine().sign().orElseThrow().seconds();
        assertTrue(sign > 2700 && sign < end, sign + " of " + end);
        assertEquals(end - sign, late.planned().engine().lastsFrom(CountsFrom.FIRST_SIGN), 1e-9);
        assertEquals(Outcome.ENGINE_LOST, late.outcome());
        assertEquals(Remark.Topic.UNSEEN, late.remarks().get(0).topic());
        // with a lamp that is on below the charging voltage the same time counts
        Bench seen =
                flying(4.5, 5).cue("low", new Cue.LowVolts(new Terminal("bus", "bar"), 13.4, 1));
        Verdict soon = verdict(seen, "alternator: regulator open");
        assertEquals(Outcome.REDUNDANCY_LOST, soon.outcome());
        assertEquals(1, soon.planned().engine().signSeconds(), 1e-6);
        assertEquals(
                List.of(Remark.Topic.STOPS_LATER),
                soon.remarks().stream().map(Remark::topic).toList());
    }

    @Test
    void whatNobodyCanSeeBeforeTheEngineFaltersCountsForNothing() throws UntoldStory {
        Verdict verdict = verdict(flying(4, 5), "alternator: regulator open");
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertTrue(verdict.remarks().get(0).words().contains("until the engine falters"));
    }

    @Test
    void whatOutlastsTheWholeFlightPlanHasLandedThoughNobodySawAnything() throws UntoldStory {
        // 20 Ah at 5 A are four hours, the plan is one
        Verdict verdict = verdict(flying(20, 5), "alternator: regulator open");
        assertEquals(Outcome.REDUNDANCY_LOST, verdict.outcome());
        assertEquals(
                List.of(Remark.Topic.UNSEEN, Remark.Topic.STOPS_LATER),
                verdict.remarks().stream().map(Remark::topic).toList());
    }

    @Test
    void aPilotWhoShedsTooLateDoesNotSaveIt() throws UntoldStory {
        assertEquals(
                Outcome.ENGINE_LOST,
                verdict(shedding(1100), "alternator: regulator open").outcome());
    }

    private static Bench sagging(double bootSeconds) {
        // a short behind a breaker pulls the bus down for some milliseconds
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.05, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .bus("stub")
                        .breaker("breaker", 5)
                        .join("battery", "plus", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .join("bus", "bar", "breaker", "in")
                        .join("breaker", "out", "stub", "bar");
        return bench.load(
                        "computer",
                        DemandKind.CONSTANT_POWER,
                        2,
                        new Tolerance(9, 10, 0.001, bootSeconds, 40, 1))
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    @Test
    void anEngineWhoseComputerResetsIsInterrupted() throws UntoldStory {
        Verdict brief = verdict(sagging(0.1), "stub: short to ground");
        assertEquals(Outcome.INTERRUPTED, brief.outcome());
        assertEquals(0, brief.planned().engine().stops());
        Verdict stopped = verdict(sagging(1), "stub: short to ground");
        assertEquals(Outcome.INTERRUPTED, stopped.outcome());
        assertEquals(1, stopped.planned().engine().stops());
    }

    @Test
    void aPilotWhoInterruptsAnEngineThatWouldHaveRunOnInterruptsIt() throws UntoldStory {
        Bench bench =
                flying(20, 5)
                        .closedSwitch("master", "on")
                        .load("pump", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                        .join("bus", "bar", "master", "in")
                        .join("master", "out", "pump", "plus")
                        .engine(
                                new Engine(
                                        EngineLogic.allOf(
                                                List.of(
                                                        new EngineLogic.One("computer"),
                                                        new EngineLogic.One("pump"))),
                                        3,
                                        2,
                                        true,
                                        30))
                        .cue("alternator light", new Cue.AlternatorOut("alternator"))
                        .procedure("off", "alternator light", 5, Map.of("master", "off"))
                        .procedure("on", "alternator light", 5.2, Map.of("master", "on"));
        Verdict verdict = verdict(bench, "alternator: regulator open");
        assertEquals(0, verdict.unaided().engine().longestInterruptionSeconds());
        // it falters for 2.5 s, of which a hand takes 2 from switch to switch and the computer
        // boots for 0.5, and runs on; but the battery
        // then ends it, after more than enough
        assertEquals(Outcome.REDUNDANCY_LOST, verdict.outcome());
        assertEquals(
                List.of(Remark.Topic.STOPS_LATER, Remark.Topic.FALTERED_BEFORE),
                verdict.remarks().stream().map(Remark::topic).toList());
        assertEquals("before that it falters for 2.5 s", verdict.remarks().get(1).words());
        assertEquals(
                List.of(Remark.Topic.STOPS_LATER),
                verdict.remarks(Pilot.NEVER).stream().map(Remark::topic).toList());
    }

    @Test
    void aLostAlternatorOrASecondFeedIsLostRedundancy() throws UntoldStory {
        Bench seen = flying(20, 5).cue("alternator light", new Cue.AlternatorOut("alternator"));
        assertEquals(
                Outcome.REDUNDANCY_LOST, verdict(seen, "alternator: regulator open").outcome());
        Verdict feed = verdict(flying(20, 5), "battery: disconnects itself");
        assertEquals(Outcome.REDUNDANCY_LOST, feed.outcome());
        assertEquals(
                List.of("battery"), feed.losses().feeds().stream().map(f -> f.source()).toList());
    }

    @Test
    void aSourceShortedToTheStructureIsALostFeedThoughItsMetalStillReachesTheLoad()
            throws UntoldStory {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("left", 20, 0.02, 1))
                        .join("left", "minus", "ground", "stud")
                        .part(Shelf.lead("right", 20, 0.02, 1))
                        .join("right", "minus", "ground", "stud")
                        .bus("left-bus")
                        .join("left", "plus", "left-bus", "bar")
                        .load(Shelf.twoInputs("computer", DemandKind.CONSTANT_POWER, 2))
                        .join("left-bus", "bar", "computer", "a")
                        .join("right", "plus", "computer", "b")
                        .engine(new EngineLogic.One("computer"), true)
                        .cue("left low", new Cue.LowVolts(new Terminal("left-bus", "bar"), 9, 1));
        Verdict verdict = verdict(bench, "left-bus: short to ground");
        assertEquals(Outcome.REDUNDANCY_LOST, verdict.outcome());
        assertEquals(
                List.of("left"), verdict.losses().feeds().stream().map(f -> f.source()).toList());
    }

    @Test
    void aRadioThatGoesDarkIsAnotherLoadLost() throws UntoldStory {
        Bench bench =
                flying(20, 5)
                        .breaker("radio-breaker", 5)
                        .load("radio", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                        .join("bus", "bar", "radio-breaker", "in")
                        .join("radio-breaker", "out", "radio", "plus");
        Verdict verdict = verdict(bench, "radio-breaker: opens for no reason");
        assertEquals(Outcome.LOADS_LOST, verdict.outcome());
        assertEquals(List.of("radio"), verdict.losses().otherLoads());
    }

    @Test
    void aBreakerThatWouldNotOpenIsNoticedByNothing() throws UntoldStory {
        Bench bench =
                flying(20, 5)
                        .breaker("radio-breaker", 5)
                        .load("radio", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                        .join("bus", "bar", "radio-breaker", "in")
                        .join("radio-breaker", "out", "radio", "plus");
        Verdict verdict = verdict(bench, "radio-breaker: does not open when it should");
        assertEquals(Outcome.NO_EFFECT, verdict.outcome());
        assertEquals(verdict.planned(), verdict.unaided());
    }

    @Test
    void whatTheEngineCannotDoWithoutIsItsOwnLoss() throws UntoldStory {
        Verdict verdict = verdict(flying(20, 5), "computer: stops working");
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertTrue(verdict.engineOwn());
    }
}
