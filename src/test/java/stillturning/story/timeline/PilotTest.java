package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.Load;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What the pilot sees, and what he does about it and when. */
class PilotTest {

    /** A battery that the alternator keeps up, a computer, and a display that shows warnings. */
    private static Bench flying() {
        return new Bench()
                .part(Shelf.lead("battery", 10, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load("lights", DemandKind.CONSTANT_CURRENT, 15, Bench.HARDY)
                .load("display", DemandKind.CONSTANT_CURRENT, 1, Bench.HARDY)
                .breaker("display-breaker", 5)
                .join("computer", "plus", "bus", "bar")
                .join("lights", "plus", "bus", "bar")
                .join("bus", "bar", "display-breaker", "in")
                .join("display-breaker", "out", "display", "plus")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Cue shown(String name, Cue.Sign sign, String by) {
        return new Cue(name, sign, Optional.of(by));
    }

    private static Bench warned() {
        return flying().cue(
                        shown("alternator light", new Cue.AlternatorOut("alternator"), "display"))
                .procedure("shed", "alternator light", 60, Map.of(), "lights");
    }

    private static Failure together(Bench bench, String... names) {
        List<Hit> hits =
                List.of(names).stream().flatMap(n -> bench.failure(n).hits().stream()).toList();
        return new Failure(String.join(" and ", names), hits, Map.of());
    }

    @ParameterizedTest
    @CsvSource({"PLANNED, 60", "LATE, 180"})
    void thePilotActsInHisTimeAfterTheCue(Pilot pilot, double seconds) throws UntoldStory {
        Bench bench = warned();
        Story story = bench.timeline().tell(bench.failure("alternator: regulator open"), pilot);
        assertEquals(0, Telling.when(story, StoryEvent.Kind.CUE, "alternator light"));
        assertEquals(seconds, Telling.when(story, StoryEvent.Kind.PILOT, "shed"));
        double left = 10 * 3600 - 21 * seconds;
        assertEquals(seconds + left / 6 + 0.32, story.engine().endurance().seconds(), 1e-3);
        assertTrue(story.aftermath().actedPilot());
    }

    @Test
    void thePilotWhoNeverActsIsNoHelp() throws UntoldStory {
        Story story = Telling.unaided(warned(), "alternator: regulator open");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PILOT));
        assertEquals(36_000 / 21.0 + 0.32, story.engine().endurance().seconds(), 1e-3);
        assertTrue(!story.aftermath().actedPilot());
    }

    @ParameterizedTest
    @CsvSource({"display-breaker: opens for no reason", "display: stops working"})
    void aCueOnADarkOrLostDisplayIsNotSeen(String alsoFails) throws UntoldStory {
        Bench bench = warned();
        Story story =
                bench.timeline()
                        .tell(
                                together(bench, alsoFails, "alternator: regulator open"),
                                Pilot.PLANNED);
        assertEquals(
                alsoFails.startsWith("display:") ? 0 : 1,
                Telling.count(story, StoryEvent.Kind.CUE));
        if (alsoFails.startsWith("display:")) {
            assertEquals(0, Telling.count(story, StoryEvent.Kind.PILOT));
        }
    }

    @Test
    void aCueThatHasNotLastedLongEnoughWhenItsDisplayGoesDarkIsNotSeen() throws UntoldStory {
        // the display rides through for 20 ms; the warning would need 50 ms
        Bench bench =
                flying().cue(
                                shown(
                                        "low volts",
                                        new Cue.LowVolts(new Terminal("bus", "bar"), 13, 0.05),
                                        "display"))
                        .procedure("shed", "low volts", 60, Map.of(), "lights");
        Failure both =
                together(
                        bench,
                        "display-breaker: opens for no reason",
                        "alternator: regulator open");
        assertEquals(
                0, Telling.count(bench.timeline().tell(both, Pilot.PLANNED), StoryEvent.Kind.CUE));
        Story seen = Telling.planned(bench, "alternator: regulator open");
        assertEquals(0.05, Telling.when(seen, StoryEvent.Kind.CUE, "low volts"), 1e-9);
    }

    @Test
    void aProcedureIsCarriedOutOnceHoweverManyOfItsCuesShow() throws UntoldStory {
        Bench bench =
                flying().cue("alternator light", new Cue.AlternatorOut("alternator"))
                        .cue("low volts", new Cue.LowVolts(new Terminal("bus", "bar"), 13, 5));
        bench.procedure("shed", "alternator light", 60, Map.of(), "lights");
        Story story = Telling.planned(bench, "alternator: regulator open");
        assertEquals(2, Telling.count(story, StoryEvent.Kind.CUE));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PILOT));
    }

    @Test
    void aLoadThatThePilotSwitchedOffIsNotLost() throws UntoldStory {
        // a fuse that takes its time is still warming when the pilot sheds
        Bench bench =
                warned().part(Shelf.fuse("fuse", 5))
                        .closedSwitch("switch", "off")
                        .load("heater", DemandKind.CONSTANT_CURRENT, 6.25, Bench.HARDY)
                        .join("bus", "bar", "fuse", "in")
                        .join("fuse", "out", "switch", "in")
                        .join("switch", "out", "heater", "plus");
        Failure slow =
                new Failure(
                        "slow",
                        bench.failure("alternator: regulator open").hits(),
                        Map.of("switch", "on"));
        Story story = bench.timeline().tell(slow, Pilot.PLANNED);
        assertTrue(Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "fuse") > 60);
        assertTrue(story.aftermath().working().contains("lights"));
        assertTrue(!story.aftermath().working().contains("heater"));
    }

    @Test
    void aCueThatShowsInNormalFlightTellsNothingNewButAnotherStillDoes() throws UntoldStory {
        Bench bench =
                flying().part(Shelf.alternator("standby", 13.6, 20, false))
                        .join("standby", "case", "ground", "stud")
                        .join("standby", "output", "bus", "bar")
                        .join("standby", "field", "bus", "bar")
                        .cue("standby light", new Cue.AlternatorOut("standby"))
                        .cue("alternator light", new Cue.AlternatorOut("alternator"));
        bench.procedure(
                "shed", List.of("standby light", "alternator light"), 60, Map.of(), "lights");
        Timeline timeline = bench.timeline();
        assertEquals(List.of("standby light"), timeline.normal().cuesShowing());
        Story nothing = timeline.tell(Failure.levers("nothing", Map.of()), Pilot.PLANNED);
        assertEquals(0, Telling.count(nothing, StoryEvent.Kind.PILOT));
        Story out = timeline.tell(bench.failure("alternator: no output"), Pilot.PLANNED);
        assertEquals(1, Telling.count(out, StoryEvent.Kind.PILOT));
    }

    @Test
    void aLoadThatStopsIsACueWhetherItStarvesOrBreaks() throws UntoldStory {
        Bench bench = flying().cue("display dark", new Cue.LoadStops("display"));
        for (String failure :
                List.of("display: stops working", "display-breaker: opens for no reason")) {
            Story story = Telling.planned(bench, failure);
            assertEquals(
                    failure.startsWith("display:") ? 0 : 0.02,
                    Telling.when(story, StoryEvent.Kind.CUE, "display dark"),
                    1e-9);
        }
    }

    @Test
    void aWarningThatHasGoneOutByTheTimeOfTheResponseCallsForNothing() throws UntoldStory {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 10, 0.02, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .closedSwitch("field-switch", "on")
                        .join("battery", "plus", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("bus", "bar", "field-switch", "in")
                        .join("field-switch", "out", "alternator", "field")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .load("lights", DemandKind.CONSTANT_CURRENT, 15, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .join("lights", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true)
                        .cue("alternator light", new Cue.AlternatorOut("alternator"))
                        .procedure("reset", "alternator light", 5, Map.of("field-switch", "on"))
                        .procedure("shed", "alternator light", 60, Map.of(), "lights");
        Failure off = Failure.levers("knocked off", Map.of("field-switch", "off"));
        Story story = bench.timeline().tell(off, Pilot.PLANNED);
        assertEquals(5, Telling.when(story, StoryEvent.Kind.PILOT, "reset"), 1e-9);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PILOT));
    }

    @Test
    void aMoveToWhereTheLeverStandsIsToldAsOneWithoutEffect() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.02, 1)
                        .closedSwitch("engine", "on")
                        .join("battery", "plus", "engine", "in")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "engine", "out")
                        .engine(new EngineLogic.One("computer"), true)
                        .cue("low", new Cue.LowVolts(new Terminal("battery", "plus"), 12, 0))
                        .procedure("engine-on", "low", 5, Map.of("engine", "on"));
        Story story = bench.timeline().tell(Failure.levers("nothing", Map.of()), Pilot.PLANNED);
        String words = story.of(StoryEvent.Kind.PILOT).get(0).words();
        assertTrue(words.endsWith("where it stands: the move changes nothing now"), words);
    }

    /**
     * 10.5 A through 0.1 ohm lift the minus of display and heater by 1.05 V: the display reads that
     * much less than the bus has against the structure. A lamp of its own is on the structure.
     */
    @Test
    void anInstrumentMeasuresAgainstItsOwnMinus() throws UntoldStory {
        Demand half = new Demand(DemandKind.CONSTANT_CURRENT, 0.5, 14);
        Demand ten = new Demand(DemandKind.CONSTANT_CURRENT, 10, 14);
        Terminal bar = new Terminal("bus", "bar");
        Bench bench =
                flying().bus("far-minus")
                        .wire("far-return", 3, 0.1)
                        .join("far-minus", "bar", "far-return", "a")
                        .join("far-return", "b", "ground", "stud")
                        .loadWithoutReturn(
                                new Load(Bench.tag("monitor"), half, Bench.HARDY, List.of("plus")))
                        .join("monitor", "plus", "bus", "bar")
                        .join("monitor", "minus", "far-minus", "bar")
                        .loadWithoutReturn(
                                new Load(Bench.tag("heater"), ten, Bench.HARDY, List.of("plus")))
                        .join("heater", "plus", "bus", "bar")
                        .join("heater", "minus", "far-minus", "bar")
                        .cue(shown("monitor low", new Cue.LowVolts(bar, 13.2, 0), "monitor"))
                        .cue(shown("monitor far lower", new Cue.LowVolts(bar, 12.5, 0), "monitor"))
                        .cue(shown("monitor high", new Cue.HighVolts(bar, 13.8, 0), "monitor"))
                        .cue("lamp low", new Cue.LowVolts(bar, 13.2, 0))
                        .cue("lamp high", new Cue.HighVolts(bar, 13.8, 0));
        assertEquals(List.of("monitor low", "lamp high"), bench.timeline().normal().cuesShowing());
    }
}
