package stillturning.story.timeline;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Blocks;
import stillturning.story.Setting.Propeller;
import stillturning.story.Setting.Shedding;
import stillturning.story.StartAttempt;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** The flight around the failure: phases, shedding, what runs now and then, starting. */
class FlightTest {

    private static final LoadNeed.Use ALWAYS =
            new LoadNeed.Use(Set.of("start", "cruise", "approach"), 1);

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    /** 10 Ah with neither resistance worth naming nor Peukert's law, 6 A in all, no alternator. */
    private static Bench battery() {
        return new Bench()
                .part(Shelf.lead("battery", 10, 0.001, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load("lights", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                .use("computer", ALWAYS, 9)
                .use("lights", ALWAYS, 1)
                .join("computer", "plus", "bus", "bar")
                .join("lights", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true)
                .phases(
                        new Phase("start", 10, 0),
                        new Phase("cruise", 1800, 60),
                        new Phase("approach", 600, 60));
    }

    private static Timeline flown(Bench bench, Batteries batteries) throws UntoldStory {
        return new Timeline(
                bench.study(),
                bench.candidate(),
                new Moment("cruise", FlightSpan.FLOWN, batteries));
    }

    private static double charge(Story story) {
        return Telling.last(Telling.trace(story, "battery"));
    }

    @Test
    void theRestOfTheFlightIsFlownAndEndsIt() throws UntoldStory {
        Bench bench = battery().use("lights", new LoadNeed.Use(Set.of("approach"), 1), 1);
        Story story = flown(bench, Batteries.AS_STATED).tell(NOTHING, Pilot.NEVER);
        assertEquals(new Endurance.Landed(2400), story.engine().endurance());
        assertEquals(
                List.of(1800.0, 2400.0),
                story.of(StoryEvent.Kind.PHASE).stream().map(StoryEvent::seconds).toList());
        // 5 A for 40 min and 1 A for 10 min, of 10 Ah
        assertEquals(100 * (1 - (5 * 2400 + 600) / 36_000.0), charge(story), 1e-6);
    }

    @Test
    void tiredBatteriesBringTheShareThatTheStudyStates() throws UntoldStory {
        Bench bench =
                battery()
                        .engine(
                                new Engine(
                                        new EngineLogic.One("computer"),
                                        0.3,
                                        2,
                                        true,
                                        30,
                                        new Engine.EngineStarting(Optional.empty(), 0.3, -10)));
        Story story = flown(bench, Batteries.TIRED).tell(NOTHING, Pilot.NEVER);
        Endurance endurance = story.engine().endurance();
        // 3 Ah at 6 A, and what the engine tolerates after the ride-through
        assertInstanceOf(Endurance.Lasts.class, endurance);
        assertEquals(1800 + 0.32, endurance.seconds(), 1e-3);
    }

    @Test
    void aPhaseThatIsHeldIsNeverLeft() throws UntoldStory {
        Story story = battery().timeline().tell(NOTHING, Pilot.NEVER);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PHASE));
        assertEquals(6000 + 0.32, story.engine().endurance().seconds(), 1e-3);
    }

    private static Bench warned(Procedure.Execution doing) {
        return battery()
                .use("lights", new LoadNeed.Use(Set.of("cruise"), 1), 2)
                .load("radio", DemandKind.CONSTANT_CURRENT, 4, Bench.HARDY)
                .use("radio", new LoadNeed.Use(Set.of("cruise"), 1), 1)
                .join("radio", "plus", "bus", "bar")
                .cue("low", new Cue.LowVolts(new Terminal("bus", "bar"), 13, 1))
                .procedure(
                        new Procedure(
                                "shed",
                                List.of("low"),
                                60,
                                Map.of(),
                                List.of("lights", "radio"),
                                doing));
    }

    /** The cue of a bus that is low from the start is known; a failure must bring it about. */
    private static Failure charging(Bench bench) {
        return bench.failure("alternator: no output");
    }

    private static Bench charged(Bench bench) {
        return bench.part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar");
    }

    @Test
    void sheddingIsWorthTheDifferenceBetweenNoneAndBest() throws UntoldStory {
        Bench bench = charged(warned(Procedure.Execution.BY_PILOT_AT_ONCE));
        Timeline timeline = bench.timeline();
        Setting planned = Setting.with(Pilot.PLANNED);
        // the alternator's field takes its 0.0 to 3.5 A only while it is fed: leave it out by ratio
        double none = seconds(timeline, charging(bench), planned.with(Shedding.NONE));
        double written = seconds(timeline, charging(bench), planned);
        double best =
                seconds(
                        timeline,
                        charging(bench),
                        planned.with(Shedding.of(Set.of("lights", "radio"))));
        assertTrue(none < written && written < best, none + " " + written + " " + best);
        // before the shedding both use the same, so the ends differ by what 61 s of 5 A are worth
        double field = 36_000 / (best - 0.32) - 5;
        assertEquals(none, 36_000 / (10 + field) + 0.32, 5);
        assertEquals(61 * 5.0, (best - written) * (5 + field), 10);
    }

    private static double seconds(Timeline timeline, Failure failure, Setting setting)
            throws UntoldStory {
        return timeline.tell(failure, setting).engine().endurance().seconds();
    }

    @Test
    void anAutomaticShedsInOrderOfRankWhateverThePilotDoes() throws UntoldStory {
        Bench bench = charged(warned(new Procedure.Execution(Optional.of("computer"), 10)));
        Story story = bench.timeline().tell(charging(bench), Pilot.NEVER);
        List<StoryEvent> shed = story.of(StoryEvent.Kind.AUTOMATIC);
        assertEquals(
                List.of("sheds radio", "sheds lights"),
                shed.stream().map(StoryEvent::words).toList());
        assertEquals(10, shed.get(1).seconds() - shed.get(0).seconds(), 1e-9);
        assertFalse(story.aftermath().actedPilot());
    }

    @Test
    void anAutomaticThatIsDeadShedsNothing() throws UntoldStory {
        Bench bench = charged(warned(new Procedure.Execution(Optional.of("radio"), 0)));
        Failure both =
                new Failure(
                        "both",
                        List.of(
                                charging(bench).hits().get(0),
                                bench.failure("radio: stops working").hits().get(0)),
                        Map.of());
        Story story = bench.timeline().tell(both, Pilot.PLANNED);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.AUTOMATIC));
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PILOT));
    }

    @Test
    void aBlockTakesTheSameChargeAtFullCurrent() throws UntoldStory {
        Bench bench = battery().use("lights", new LoadNeed.Use(Set.of("cruise"), 0.25), 1);
        Timeline timeline =
                new Timeline(
                        bench.study(),
                        bench.candidate(),
                        new Moment("cruise", FlightSpan.FLOWN, Batteries.AS_STATED));
        Setting never = Setting.with(Pilot.NEVER);
        Story even = timeline.tell(NOTHING, never);
        Story block = timeline.tell(NOTHING, never.with(new Blocks(100, 1800)));
        assertEquals(charge(even), charge(block), 1e-6);
        double atNoon =
                Telling.trace(block, "battery").points().stream()
                        .filter(p -> p.seconds() >= 100)
                        .findFirst()
                        .orElseThrow()
                        .value();
        assertEquals(100 * (1 - 5 * 100 / 36_000.0), atNoon, 1e-6);
    }

    /** A starter of this current on a battery of this resistance, and a computer that minds. */
    private static Bench started(double ohms, double amps) {
        return running(ohms)
                .load("starter", DemandKind.CONSTANT_CURRENT, amps, Bench.HARDY)
                .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                .join("starter", "plus", "bus", "bar");
    }

    /** All of it but the starter. */
    private static Bench running(double ohms) {
        return new Bench()
                .part(Shelf.lead("battery", 20, ohms, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .use("computer", ALWAYS, 9)
                .join("computer", "plus", "bus", "bar")
                .engine(
                        new Engine(
                                new EngineLogic.One("computer"),
                                0.3,
                                2,
                                true,
                                30,
                                new Engine.EngineStarting(Optional.of("starter"), 0.5, 25)))
                .phases(new Phase("start", 10, 0), new Phase("cruise", 1800, 60));
    }

    private static StartAttempt start(Bench bench, boolean hard) throws UntoldStory {
        return Timeline.start(bench.study(), bench.candidate(), hard).orElseThrow();
    }

    private static double lowest(StartAttempt start, String load) {
        return requireNonNull(start.lowestVolts().get(load), load);
    }

    @Test
    void theSagOfCrankingIsThatOfTheResistance() throws UntoldStory {
        StartAttempt start = start(started(0.01, 150), false);
        assertTrue(start.runs());
        assertEquals(2, start.seconds(), 1e-6);
        // 155 A through 10 mohm from 12.65 V, the charge falling by less than 0.5 %
        assertEquals(12.65 - 155 * 0.01, lowest(start, "starter"), 0.01);
        assertEquals(lowest(start, "starter"), lowest(start, "computer"), 1e-3);
        assertEquals(150, start.starterAmps(), 1e-6);
        assertEquals(List.of(), start.resets());
    }

    /** Until its contactor has pulled in it has no voltage at all, and that is no sag. */
    @Test
    void aStarterSagsFromWhenItsContactorReachesIt() throws UntoldStory {
        Bench bench =
                startedByKey()
                        .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                        .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                        .join("starter", "plus", "solenoid", "out");
        StartAttempt reached = start(bench.starting(Map.of("button", "on")), false);
        assertTrue(reached.runs());
        assertEquals(12.65 - 156 * 0.01, lowest(reached, "starter"), 0.1);
        StartAttempt never = start(bench.starting(Map.of()), false);
        assertFalse(never.runs());
        assertEquals(0, lowest(never, "starter"));
    }

    private static Bench startedByKey() {
        return running(0.01)
                .closedSwitch("button", "off")
                .part(Shelf.contactor("solenoid", 0.015))
                .join("bus", "bar", "solenoid", "in")
                .join("bus", "bar", "button", "in")
                .join("button", "out", "solenoid", "coil-plus")
                .join("solenoid", "coil-minus", "ground", "stud");
    }

    @Test
    void aComputerThatTheSagResetsKeepsTheEngineFromStarting() throws UntoldStory {
        StartAttempt start = start(started(0.05, 150), false);
        assertFalse(start.runs());
        assertTrue(start.resets().contains("computer"), start.toString());
        assertTrue(
                start.happenings().stream()
                        .anyMatch(h -> h.kind() == StoryEvent.Kind.CRANKING_FAILS));
    }

    @Test
    void theKeyMovesItsLeversAndLetsThemGo() throws UntoldStory {
        Bench bench =
                started(0.01, 5)
                        .closedSwitch("button", "off")
                        .load("horn", DemandKind.CONSTANT_CURRENT, 140, Bench.HARDY)
                        .use("horn", ALWAYS, 1)
                        .join("bus", "bar", "button", "in")
                        .join("button", "out", "horn", "plus");
        StartAttempt without = start(bench, false);
        StartAttempt with = start(bench.starting(Map.of("button", "on")), false);
        assertTrue(with.runs());
        assertEquals(140 * 0.01, lowest(without, "computer") - lowest(with, "computer"), 0.02);
    }

    @Test
    void nobodyCranksWhereThereIsNoStarter() throws UntoldStory {
        Bench bench = battery();
        assertTrue(Timeline.start(bench.study(), bench.candidate(), false).isEmpty());
    }

    private static final double HABIT = 8;

    private static Bench switchedBack(double ohms) {
        return started(ohms, 150)
                .bus("engine-bus")
                .closedSwitch("feed", "on")
                .join("bus", "bar", "feed", "in")
                .load("ignition", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .join("feed", "out", "ignition", "plus")
                .engine(
                        new Engine(
                                new EngineLogic.One("ignition"),
                                0.3,
                                2,
                                true,
                                30,
                                new Engine.EngineStarting(
                                        Optional.of("starter"), 0.5, 25, Optional.of(HABIT))))
                .cue("engine stops", new Cue.EngineStops())
                .procedure("switch on", "engine stops", 5, Map.of("feed", "on"));
    }

    @Test
    void aStandingPropellerWantsTheStarterAndATurningOneDoesNot() throws UntoldStory {
        Bench bench = switchedBack(0.01);
        Failure off = Failure.levers("feed off", Map.of("feed", "off"));
        Setting planned = Setting.with(Pilot.PLANNED);
        Story turning = bench.timeline().tell(off, planned);
        Story standing = bench.timeline().tell(off, planned.with(Propeller.STANDS));
        assertTrue(turning.engine().runningAtEnd() || turning.engine().stoppedAndCameBack());
        assertEquals(0, Telling.count(turning, StoryEvent.Kind.CRANKING));
        // once after this stop, and once more when the battery has ended it for good
        assertEquals(2, Telling.count(standing, StoryEvent.Kind.CRANKING));
        // the starter is pressed some time after the stop, not at once and not for nothing
        assertEquals(
                standing.of(StoryEvent.Kind.ENGINE_STOPS).get(0).seconds() + HABIT,
                standing.of(StoryEvent.Kind.CRANKING).get(0).seconds(),
                1e-6);
        assertTrue(
                Telling.when(turning, StoryEvent.Kind.ENGINE_RESTARTS, "engine")
                        < Telling.when(standing, StoryEvent.Kind.ENGINE_RESTARTS, "engine"));
        Story never = bench.timeline().tell(off, Setting.with(Pilot.NEVER).with(Propeller.STANDS));
        assertEquals(0, Telling.count(never, StoryEvent.Kind.CRANKING));
    }

    @Test
    void whatIsLeftMayNotCrankAStandingPropeller() throws UntoldStory {
        Bench bench = switchedBack(0.05);
        Failure off = Failure.levers("feed off", Map.of("feed", "off"));
        Story standing =
                bench.timeline().tell(off, Setting.with(Pilot.PLANNED).with(Propeller.STANDS));
        assertEquals(1, Telling.count(standing, StoryEvent.Kind.CRANKING_FAILS));
        assertFalse(standing.engine().runningAtEnd());
    }
}
