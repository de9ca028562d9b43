package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.Load;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Endurance.AtLeast;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Alternators, converters, the engine that turns them, and too much of a good thing. */
class SourceStoryTest {

    private static final Tolerance DELICATE = new Tolerance(9, 10, 0.02, 0.5, 16, 0.1);

    private static Bench flying(Tolerance computer) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, computer)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Bench unguarded(Tolerance computer) {
        return flying(computer).join("alternator", "output", "bus", "bar");
    }

    private static Bench guarded(double volts, double seconds) {
        return flying(DELICATE)
                .part(Shelf.guard("guard", volts, seconds))
                .join("alternator", "output", "guard", "in")
                .join("guard", "out", "bus", "bar")
                .join("guard", "minus", "ground", "stud");
    }

    @Test
    void aRunawayRegulatorDestroysWhatCannotBearItAfterTheTimeThatItBears() throws UntoldStory {
        Story story = Telling.unaided(unguarded(DELICATE), "alternator: over-voltage");
        assertEquals(0.1, Telling.when(story, StoryEvent.Kind.LOAD_DESTROYED, "computer"), 1e-9);
        assertEquals(0.1 + 0.3, story.engine().endurance().seconds(), 1e-9);
        assertTrue(!story.engine().runningAtEnd());
    }

    @Test
    void aGuardOpensBeforeTheLoadsSufferAndTheBatteryCarriesOn() throws UntoldStory {
        Story story = Telling.unaided(guarded(15.5, 0.05), "alternator: over-voltage");
        assertEquals(0.05, Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "guard"), 1e-9);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_DESTROYED));
        assertTrue(assertInstanceOf(Lasts.class, story.engine().endurance()).seconds() > 3600);
    }

    @Test
    void aGuardSlowerThanTheLoadsComesTooLate() throws UntoldStory {
        Story story = Telling.unaided(guarded(15.5, 0.2), "alternator: over-voltage");
        assertEquals(1, Telling.count(story, StoryEvent.Kind.LOAD_DESTROYED));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
    }

    @Test
    void aGuardWhoseReturnHasComeOffIsBlind() throws UntoldStory {
        Bench bench =
                flying(DELICATE)
                        .part(Shelf.guard("guard", 15.5, 0.05))
                        .wire("return", 1, 0.02)
                        .join("alternator", "output", "guard", "in")
                        .join("guard", "out", "bus", "bar")
                        .join("guard", "minus", "return", "a")
                        .join("return", "b", "ground", "stud");
        List<Hit> hits =
                Stream.of("return: open", "alternator: over-voltage")
                        .flatMap(name -> bench.failure(name).hits().stream())
                        .toList();
        Story story = bench.timeline().tell(new Failure("both", hits, Map.of()), Pilot.NEVER);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.LOAD_DESTROYED));
    }

    @Test
    void aLoadThatIsSwitchedOffSurvivesTooMuchVoltage() throws UntoldStory {
        Bench bench =
                unguarded(Bench.HARDY)
                        .load("radio", DemandKind.CONSTANT_CURRENT, 1, DELICATE)
                        .join("radio", "plus", "bus", "bar")
                        .cue("high volts", new Cue.HighVolts(new Terminal("bus", "bar"), 15.5, 0))
                        .procedure("radio off", "high volts", 0.05, Map.of(), "radio");
        Story planned = Telling.planned(bench, "alternator: over-voltage");
        assertEquals(0, Telling.count(planned, StoryEvent.Kind.LOAD_DESTROYED));
        assertEquals("bus is above 15.5 V", planned.of(StoryEvent.Kind.CUE).get(0).words());
        assertEquals(
                1,
                Telling.count(
                        Telling.unaided(bench, "alternator: over-voltage"),
                        StoryEvent.Kind.LOAD_DESTROYED));
    }

    @Test
    void aStoppedEngineStillTurnsTheAlternatorWhileItWindmills() throws UntoldStory {
        Story story = Telling.unaided(unguarded(Bench.HARDY), "computer: stops working");
        assertEquals(0.3, Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine"), 1e-9);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.SOURCE_STOPS));
        assertEquals(0.3, story.engine().endurance().seconds(), 1e-9);
    }

    @Test
    void aStoppedPropellerStopsTheAlternatorToo() throws UntoldStory {
        Bench bench =
                unguarded(Bench.HARDY)
                        .engine(new Engine(new EngineLogic.One("computer"), 0.3, 2, false, 30));
        Story story = Telling.unaided(bench, "computer: stops working");
        StoryEvent stops = story.of(StoryEvent.Kind.SOURCE_STOPS).get(0);
        assertEquals(0.3, stops.seconds(), 1e-9);
        assertTrue(stops.words().contains("turns too slowly"), stops.words());
    }

    @Test
    void atWindmillingSpeedTheAlternatorGivesOnlyItsShare() throws UntoldStory {
        // 30 turns a second lie a quarter of the way from nothing at 20 to 45 A at 60: 11.25 A; the
        // pump draws 20 A, so the battery gives 8.75 A less the field's share
        Bench bench =
                unguarded(Bench.HARDY)
                        .load("pump", DemandKind.CONSTANT_CURRENT, 20, Bench.HARDY)
                        .join("pump", "plus", "bus", "bar");
        Story story = Telling.unaided(bench, "computer: stops working");
        double volts = Telling.last(Telling.trace(story, "bus"));
        double gives = 20 + volts / 4 - 11.25;
        assertEquals((12.65 - volts) / 0.02, gives, 1e-3);
    }

    @Test
    void theEngineRestartsAsLongAfterThePilotFeedsItAsTheStudySays() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.02, 1)
                        .bus("bus", "feed")
                        .closedSwitch("alternate", "off")
                        .join("battery", "plus", "bus", "feed")
                        .join("battery", "plus", "alternate", "in")
                        .join("alternate", "out", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_POWER, 1, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .engine(new Engine(new EngineLogic.One("computer"), 0.3, 4, true, 30))
                        .cue("silence", new Cue.EngineStops())
                        .procedure("alternate feed", "silence", 8, Map.of("alternate", "on"));
        Story story = Telling.planned(bench, "bus: feed open");
        double stops = Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine");
        assertEquals(0.02 + 0.3, stops, 1e-9);
        // eight seconds for the pilot, half a second to boot, four to catch
        assertEquals(
                stops + 8 + 0.5 + 4,
                Telling.when(story, StoryEvent.Kind.ENGINE_RESTARTS, "engine"),
                1e-9);
        assertTrue(story.engine().endurance().seconds() > 3600);
        assertEquals(1, story.engine().stops());
    }

    @Test
    void aConverterDropsOutAtItsMinimumAndItsLoadWithIt() throws UntoldStory {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.02, 1))
                        .join("battery", "minus", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .part(Shelf.converter("converter", 20))
                        .join("converter", "in", "bus", "bar")
                        .join("converter", "minus", "ground", "stud")
                        .load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                        .join("computer", "plus", "converter", "out")
                        .engine(new EngineLogic.One("computer"), true);
        Story story = Telling.unaided(bench, "bus: short to ground");
        assertEquals(0, Telling.when(story, StoryEvent.Kind.SOURCE_STOPS, "converter"));
        assertEquals(0.02, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"), 1e-9);
        Story ended = Telling.unaided(bench, "converter: no output");
        assertEquals(0.02 + 0.3, ended.engine().endurance().seconds(), 1e-9);
    }

    @Test
    void aLoadWithTwoInputsRunsOnEither() throws UntoldStory {
        Load computer = Shelf.twoInputs("computer", DemandKind.CONSTANT_POWER, 6);
        Bench bench =
                new Bench()
                        .battery("left", 20, 0.02, 1)
                        .battery("right", 20, 0.02, 1)
                        .load(computer)
                        .join("left", "plus", "computer", "a")
                        .join("right", "plus", "computer", "b")
                        .engine(new EngineLogic.One("computer"), false);
        Story both = Telling.unaided(bench, "ground: high resistance");
        Story one = Telling.unaided(bench, "left: disconnects itself");
        assertEquals(0, one.engine().longestInterruptionSeconds());
        double whole = both.engine().endurance().seconds();
        assertTrue(one.engine().endurance().seconds() < 0.51 * whole);
        assertTrue(one.engine().endurance().seconds() > 0.49 * whole);
    }

    @Test
    void aSourceThatCarriesEverythingIsNotLimited() throws UntoldStory {
        Bench bench = unguarded(Bench.HARDY);
        assertInstanceOf(
                NotLimited.class,
                Telling.unaided(bench, "battery: disconnects itself").engine().endurance());
    }

    @Test
    void partOutputThatStillCarriesTheLoadsIsNotLimited() throws UntoldStory {
        Story story = Telling.unaided(unguarded(Bench.HARDY), "alternator: part output");
        assertInstanceOf(NotLimited.class, story.engine().endurance());
    }

    @Test
    void aHorizonThatComesFirstIsSaidToBeOne() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 100, 0.02, 1)
                        .load(
                                new Load(
                                        Bench.tag("computer"),
                                        new Demand(DemandKind.CONSTANT_POWER, 1, 12),
                                        Bench.HARDY,
                                        List.of("plus")))
                        .join("battery", "plus", "computer", "plus")
                        .engine(new EngineLogic.One("computer"), true);
        Story story = Telling.unaided(bench, "ground: high resistance");
        assertEquals(
                Timeline.HORIZON_SECONDS,
                assertInstanceOf(AtLeast.class, story.engine().endurance()).seconds());
    }
}
