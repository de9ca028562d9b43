package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.LoadNeed.Inrush;
import stillturning.model.Phase;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.MotorStart;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * The start of a motor that runs now and then. Every number by hand: a rotor that stands is a
 * resistance, 80 A at 12 V are 0.15 ohm; the computer is 1.2 ohm, the field 4 ohm, the motor's
 * average 80 ohm.
 */
class MotorStartTest {

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());
    private static final Inrush STALLED = new Inrush(80, 0.15);

    /** Needs 6 V, bears 20 ms without and is back after 100 ms. */
    private static final Tolerance COMPUTER = new Tolerance(6, 6.5, 0.02, 0.1, 40, 1);

    private static final double FULL_FIELD_VOLTS = 14.2;
    private static final double MAGNETS = 0;

    private static Bench bench(double fullFieldVolts, double amps, Tolerance computer) {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .part(Shelf.alternator("alternator", 14.2, amps, fullFieldVolts, Shelf.STEADY))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "battery", "plus")
                .join("alternator", "field", "battery", "plus")
                .load("computer", DemandKind.CONSTANT_RESISTANCE, 10, computer)
                .join("computer", "plus", "battery", "plus")
                .load("gear-motor", DemandKind.CONSTANT_RESISTANCE, 5, Bench.HARDY)
                .use("gear-motor", now(STALLED, "cruise"), 1)
                .join("gear-motor", "plus", "battery", "plus")
                .engine(new Engine(new EngineLogic.One("computer"), 1, 2, true, 30));
    }

    private static LoadNeed.Use now(Inrush inrush, String phase) {
        return new LoadNeed.Use(Set.of(phase), 0.03, false, inrush);
    }

    private static String words(Story story, int number) {
        return story.of(StoryEvent.Kind.LOAD_STARTS).get(number).words();
    }

    @Test
    void aStartThatTheBatteryTakesUpIsNoPartOfTheStory() throws UntoldStory {
        Story story = bench(FULL_FIELD_VOLTS, 60, COMPUTER).timeline().tell(NOTHING, Pilot.NEVER);
        assertEquals(1, story.happenings().size());
        assertEquals(new MotorStart.AtWorst(), story.setting().start());
    }

    /**
     * Before: 14.2 V behind 0.005 ohm into 1.0958 S are 15.48 A. Those are all that the field
     * allows in 150 ms: into 1/0.15 + 1/1.2 + 1/4 = 7.75 S they make 2.0 V. The computer stops
     * after 20 ms and is back 100 ms after the inrush: 230 ms without it.
     */
    @Test
    void anAlternatorAloneCannotTakeUpAMotorsStart() throws UntoldStory {
        Story story =
                Telling.unaided(
                        bench(FULL_FIELD_VOLTS, 60, COMPUTER), "battery: disconnects itself");
        assertEquals(new MotorStart.Of("gear-motor", 0.001), story.setting().start());
        assertEquals(
                "starts at the worst moment: 80 A for 150 ms, then 5.0 A for 108 s",
                words(story, 0));
        assertEquals("has started, with 2.0 V left to it", words(story, 1));
        assertEquals(0.23, story.engine().longestInterruptionSeconds(), 1e-6);
        assertEquals(0, story.engine().stops());
    }

    /** The engine bears 100 ms, the computer is away for 230 ms. */
    @Test
    void theDipStopsAnEngineThatBearsLess() throws UntoldStory {
        Bench bench =
                bench(FULL_FIELD_VOLTS, 60, COMPUTER)
                        .engine(new Engine(new EngineLogic.One("computer"), 0.1, 2, true, 30));
        Story story = Telling.unaided(bench, "battery: disconnects itself");
        assertEquals(
                0.001 + 0.02 + 0.1,
                Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine"),
                1e-9);
        assertEquals(1, story.engine().stops());
    }

    @Test
    void aComputerThatRidesThroughTheInrushNoticesNothing() throws UntoldStory {
        Tolerance patient = new Tolerance(6, 6.5, 0.16, 0.1, 40, 1);
        Story story =
                Telling.unaided(
                        bench(FULL_FIELD_VOLTS, 60, patient), "battery: disconnects itself");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_STARTS));
        assertEquals(0, story.engine().longestInterruptionSeconds());
    }

    /** Magnets give their 60 A at once: 60/7.75 = 7.7 V are enough; 40 A make 5.2 V. */
    @Test
    void magnetsGiveWhatTheyCanAtOnce() throws UntoldStory {
        Story strong = Telling.unaided(bench(MAGNETS, 60, COMPUTER), "battery: disconnects itself");
        assertEquals(0, Telling.count(strong, StoryEvent.Kind.LOAD_STARTS));
        Story weak = Telling.unaided(bench(MAGNETS, 40, COMPUTER), "battery: disconnects itself");
        assertEquals("has started, with 5.2 V left to it", words(weak, 1));
        assertEquals(0.23, weak.engine().longestInterruptionSeconds(), 1e-6);
    }

    /**
     * Figures of an accident (main alternator off line; read in a second source): 20 A left and a
     * gear pump that asks for 41 A at its start, or 0.293 ohm; the rest is supposed. 20 A into
     * 1/0.293 + 1/1.2 + 1/4 = 4.5 S are 4.4 V.
     */
    @Test
    void aGearPumpStopsTheEngineOfASmallSecondAlternator() throws UntoldStory {
        Bench bench =
                bench(MAGNETS, 20, COMPUTER)
                        .use("gear-motor", now(new Inrush(41, 0.15), "cruise"), 1);
        Story story = Telling.unaided(bench, "battery: disconnects itself");
        assertEquals("has started, with 4.4 V left to it", words(story, 1));
        assertTrue(story.engine().longestInterruptionSeconds() > 0);
    }

    /** One ground for all hurts nobody; 0.5 ohm before the battery alone leave the motor 2.6 V. */
    @Test
    void aBatteryBehindABadContactIsAsGoodAsNone() throws UntoldStory {
        Bench bench = bench(FULL_FIELD_VOLTS, 60, COMPUTER);
        Story story = Telling.unaided(bench, "ground: high resistance");
        assertEquals(
                0, Telling.count(story, StoryEvent.Kind.LOAD_STARTS), "all hang on one ground");
        Bench apart =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.01, 1))
                        .wire("minus", 1, 0.5)
                        .join("battery", "minus", "minus", "a")
                        .join("minus", "b", "ground", "stud")
                        .load("computer", DemandKind.CONSTANT_RESISTANCE, 10, COMPUTER)
                        .join("computer", "plus", "battery", "plus")
                        .load("gear-motor", DemandKind.CONSTANT_RESISTANCE, 5, Bench.HARDY)
                        .use("gear-motor", now(STALLED, "cruise"), 1)
                        .join("gear-motor", "plus", "battery", "plus")
                        .engine(new Engine(new EngineLogic.One("computer"), 1, 2, true, 30));
        // 12.7 V behind 0.51 ohm into 1/0.15 + 1/1.2 = 7.5 S: 12.7/(1 + 0.51 * 7.5)
        Setting atOnce = Setting.with(Pilot.NEVER).with(new MotorStart.Of("gear-motor", 0));
        assertEquals(
                "has started, with 2.6 V left to it",
                words(apart.timeline().tell(NOTHING, atOnce), 1));
        Story worst = apart.timeline().tell(NOTHING, Pilot.NEVER);
        assertEquals(0.23, worst.engine().longestInterruptionSeconds(), 1e-6);
    }

    /** 0.1 ohm and a battery that falls: full it leaves 7.2 V, at its end less than the 6.9 V. */
    @Test
    void aBatteryThatRunsDownMakesTheLateStartTheWorstOne() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 5, 0.1, 1)
                        .load(
                                "computer",
                                DemandKind.CONSTANT_RESISTANCE,
                                10,
                                new Tolerance(6.9, 7, 0.02, 0.1, 40, 1))
                        .join("computer", "plus", "battery", "plus")
                        .load("gear-motor", DemandKind.CONSTANT_RESISTANCE, 5, Bench.HARDY)
                        .use("gear-motor", now(STALLED, "cruise"), 1)
                        .join("gear-motor", "plus", "battery", "plus")
                        .engine(new Engine(new EngineLogic.One("computer"), 1, 2, true, 30));
        Timeline timeline = bench.timeline();
        Bench warned = bench.cue("low", new Cue.LowVolts(new Terminal("battery", "plus"), 11.6, 0));
        Story until = warned.enough(60).timeline().tell(NOTHING, Pilot.NEVER);
        assertEquals(new MotorStart.AtWorst(), until.setting().start(), "it has landed by then");
        Story worst = timeline.tell(NOTHING, Pilot.NEVER);
        double at = worst.setting().start().one().orElseThrow().atSeconds();
        assertTrue(at > 180, at + " s");
        assertTrue(worst.engine().longestInterruptionSeconds() > 0);
        Setting early = Setting.with(Pilot.NEVER).with(new MotorStart.Of("gear-motor", 0));
        assertEquals(0, timeline.tell(NOTHING, early).engine().longestInterruptionSeconds());
    }

    /** A cruise that is held goes on without end, but the gear is let down all the same. */
    @Test
    void whatStartsInALaterPhaseStartsInAPhaseThatIsHeld() throws UntoldStory {
        Bench bench =
                bench(FULL_FIELD_VOLTS, 60, COMPUTER)
                        .use("gear-motor", now(STALLED, "approach"), 1)
                        .use("computer", new LoadNeed.Use(Set.of("cruise", "approach"), 1), 9)
                        .phases(new Phase("cruise", 1200, 60), new Phase("approach", 600, 60));
        Story held = Telling.unaided(bench, "battery: disconnects itself");
        assertEquals(0.001, held.setting().start().one().orElseThrow().atSeconds());
        Timeline flown =
                new Timeline(
                        bench.study(),
                        bench.candidate(),
                        new Moment("cruise", FlightSpan.FLOWN, Batteries.AS_STATED));
        Story story = flown.tell(bench.failure("battery: disconnects itself"), Pilot.NEVER);
        assertEquals(1200.001, story.setting().start().one().orElseThrow().atSeconds(), 1e-9);
        assertEquals(0.23, story.engine().longestInterruptionSeconds(), 1e-6);
    }

    @Test
    void whatRunsAllTheTimeOrIsShedDoesNotStart() throws UntoldStory {
        Bench always =
                bench(FULL_FIELD_VOLTS, 60, COMPUTER)
                        .use(
                                "gear-motor",
                                new LoadNeed.Use(Set.of("cruise"), 1, false, STALLED),
                                1);
        String lost = "battery: disconnects itself";
        assertEquals(0, Telling.count(Telling.unaided(always, lost), StoryEvent.Kind.LOAD_STARTS));
        Bench bench = bench(FULL_FIELD_VOLTS, 60, COMPUTER);
        Setting best = Setting.with(Pilot.NEVER).with(Setting.Shedding.of(Set.of("gear-motor")));
        Story shed = bench.timeline().tell(bench.failure(lost), best);
        assertEquals(0, shed.of(StoryEvent.Kind.LOAD_STARTS).size());
    }

    @Test
    void aStoryThatIsWatchedIsTheOneThatIsTold() throws UntoldStory {
        Bench bench = bench(FULL_FIELD_VOLTS, 60, COMPUTER);
        Failure lost = bench.failure("battery: disconnects itself");
        Setting setting = Setting.with(Pilot.NEVER);
        assertEquals(
                List.copyOf(bench.timeline().tell(lost, setting).happenings()),
                bench.timeline().watch(lost, setting).story().happenings());
    }
}
