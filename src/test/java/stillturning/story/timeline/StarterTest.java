package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Remark;
import stillturning.assess.verdict.Verdict;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.CountsFrom;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Pressing the starter is something that the pilot does, and the flight may need it. */
class StarterTest {

    private static final LoadNeed.Use ALWAYS =
            new LoadNeed.Use(Set.of("start", "cruise", "soar", "home"), 1);

    private static final Failure FEED_OFF = Failure.levers("feed off", Map.of("feed", "off"));

    /** An engine that nothing but a starter turns, with a switch in the feed of its ignition. */
    private static Bench bench(double ampHours, Optional<Double> habit) {
        return new Bench()
                .part(Shelf.lead("battery", ampHours, 0.01, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                .join("starter", "plus", "bus", "bar")
                .closedSwitch("feed", "on")
                .join("bus", "bar", "feed", "in")
                .load("ignition", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .use("ignition", ALWAYS, 9)
                .join("feed", "out", "ignition", "plus")
                .load("radio", DemandKind.CONSTANT_CURRENT, 4, Bench.HARDY)
                .use("radio", ALWAYS, 2)
                .join("radio", "plus", "bus", "bar")
                .cue("alternator light", new Cue.AlternatorOut("alternator"))
                .cue("silence", new Cue.EngineStops())
                .engine(
                        new Engine(
                                new EngineLogic.One("ignition"),
                                0.3,
                                2,
                                false,
                                0,
                                new Engine.EngineStarting(Optional.of("starter"), 0.5, 25, habit)))
                .phases(new Phase("start", 10, 0), new Phase("cruise", 1800, 60))
                .enough(600);
    }

    private static Bench switchedBack(Optional<Double> habit, boolean pressed) {
        return bench(20, habit)
                .procedure(
                        new Procedure(
                                "switch on",
                                List.of("silence"),
                                5,
                                Map.of("feed", "on"),
                                List.of(),
                                new Procedure.Execution(Optional.empty(), 0, pressed)));
    }

    private static List<Double> cranked(Story story) {
        return story.of(StoryEvent.Kind.CRANKING).stream().map(StoryEvent::seconds).toList();
    }

    @Test
    void nobodyPressesTheStarterUnlessAProcedureOrAHabitSaysSo() throws UntoldStory {
        Story story =
                switchedBack(Optional.empty(), false).timeline().tell(FEED_OFF, Pilot.PLANNED);
        assertEquals(List.of(), cranked(story));
        assertFalse(story.engine().runningAtEnd());
    }

    @Test
    void aProcedurePressesItAfterItsMoves() throws UntoldStory {
        Story story = switchedBack(Optional.empty(), true).timeline().tell(FEED_OFF, Pilot.PLANNED);
        double moved = Telling.when(story, StoryEvent.Kind.PILOT, "switch on");
        assertEquals(List.of(moved), cranked(story));
        assertTrue(story.engine().runningAtEnd());
        // turned for the 2 s that the engine takes; the key springs back when it is let go
        String words = story.of(StoryEvent.Kind.ENGINE_RESTARTS).get(0).words();
        assertEquals("runs again, turned by the starter, the key held for 2.5 s", words);
        assertTrue(story.aftermath().actedPilot());
    }

    @Test
    void byHabitItIsPressedAfterTheStopAndOnceMoreAfterEachAct() throws UntoldStory {
        Bench bench = switchedBack(Optional.of(2.0), false);
        Story story = bench.timeline().tell(FEED_OFF, Pilot.PLANNED);
        double stopped = Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine");
        double moved = Telling.when(story, StoryEvent.Kind.PILOT, "switch on");
        // pressed in vain 2 s after the stop; the feed comes back while the starter still turns it
        assertEquals(stopped + 2, cranked(story).get(0), 1e-9);
        assertTrue(moved > cranked(story).get(0) && moved < cranked(story).get(0) + 10);
        assertEquals(1, cranked(story).size());
        assertTrue(story.engine().runningAtEnd());
        // one who is slow presses it in three times the time; one who does nothing never
        Story late = bench.timeline().tell(FEED_OFF, Pilot.LATE);
        assertEquals(stopped + 6, cranked(late).get(0), 1e-9);
        assertEquals(List.of(), cranked(bench.timeline().tell(FEED_OFF, Pilot.NEVER)));
    }

    @Test
    void aHabitThatBringsTheEngineBackIsAnActOfThePilot() throws UntoldStory {
        Bench bench = switchedBack(Optional.of(20.0), false);
        Verdict verdict = Assess.one(bench.study(), bench.candidate(), FEED_OFF);
        assertEquals(Outcome.STOPS_UNTIL_PILOT_ACTS, verdict.outcome());
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome(Pilot.NEVER));
    }

    /** An hour of soaring without engine, then half an hour home. */
    private static Bench soaring(double ampHours) {
        return bench(ampHours, Optional.empty())
                .phases(
                        new Phase("start", 10, 0),
                        new Phase("cruise", 600, 60),
                        new Phase("soar", 3600, 0, true),
                        new Phase("home", 1800, 60));
    }

    private static Verdict verdict(Bench bench, String failure, Moment moment) throws UntoldStory {
        return Assess.one(bench.study(), bench.candidate(), bench.failure(failure), moment);
    }

    private static Moment flownIn(String phase) {
        return new Moment(phase, FlightSpan.FLOWN, Batteries.AS_STATED);
    }

    @Test
    void anEngineThatIsOffOnPurposeHasNotStoppedAndIsStartedAsTheFlightHasIt() throws UntoldStory {
        Bench bench = soaring(20);
        Verdict verdict = verdict(bench, "radio: stops working", flownIn("cruise"));
        Story story = verdict.planned();
        assertEquals(0, Telling.count(story, StoryEvent.Kind.ENGINE_STOPS));
        assertEquals(List.of(600.0 + 3600), cranked(story));
        assertTrue(story.engine().runningAtEnd());
        assertEquals(Outcome.LOADS_LOST, verdict.outcome());
        // who does nothing about failures flies the aircraft all the same
        assertFalse(story.aftermath().actedPilot());
    }

    @Test
    void aFailureWhileTheEngineIsOffThatForbidsTheRestartEndsIt() throws UntoldStory {
        Verdict verdict = verdict(soaring(20), "battery: disconnects itself", flownIn("soar"));
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertEquals(
                Remark.Topic.CANNOT_BE_STARTED, verdict.remarks().get(0).topic(), "and says why");
        assertEquals(0, verdict.planned().engine().endurance().seconds(), 1e-9);
    }

    @Test
    void enduranceCountsTheMinutesThatTheEngineRuns() throws UntoldStory {
        // the radio takes 4 Ah and the ignition 2 Ah in the hour of soaring; the start next to
        // nothing. What is left of 10 Ah then runs ignition, radio and field without alternator.
        Verdict verdict = verdict(soaring(10), "alternator: no output", Moment.heldIn("soar"));
        Story story = verdict.planned();
        double started = cranked(story).get(0);
        assertEquals(3600, started, 1e-9);
        double stops = story.of(StoryEvent.Kind.ENGINE_STOPS).get(0).seconds();
        assertEquals(stops - 3600, story.engine().endurance().seconds(), 1e-6);
        assertTrue(
                story.engine().lastsFrom(CountsFrom.FIRST_SIGN)
                        <= story.engine().endurance().seconds());
    }

    @Test
    void aFailureMayHappenInEveryPhaseEvenBeforeTheStart() throws UntoldStory {
        Bench bench = soaring(20);
        Verdict start = verdict(bench, "radio: stops working", flownIn("start"));
        assertEquals(List.of(0.0, 10.0 + 600 + 3600), cranked(start.planned()));
        assertTrue(start.planned().engine().runningAtEnd());
        Verdict never = verdict(bench, "battery: disconnects itself", flownIn("start"));
        assertEquals(Outcome.ENGINE_LOST, never.outcome());
    }

    @Test
    void whatIsLeftAfterAFailureStartsTheEngineAgainOrNot() throws UntoldStory {
        Timeline timeline = bench(20, Optional.empty()).timeline();
        Bench bench = bench(20, Optional.empty());
        assertTrue(timeline.restart(bench.failure("radio: stops working")).runs());
        assertTrue(timeline.restart(bench.failure("alternator: no output")).runs());
        assertFalse(timeline.restart(bench.failure("battery: disconnects itself")).runs());
    }

    /** The same with a button in the starter's feed, which normal flight has open. */
    private static Bench buttoned(LoadNeed.Use starters) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.01, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .closedSwitch("button", "off")
                .join("bus", "bar", "button", "in")
                .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                .use("starter", starters, 1)
                .join("button", "out", "starter", "plus")
                .load("ignition", DemandKind.CONSTANT_CURRENT, 2, Bench.HARDY)
                .use("ignition", ALWAYS, 9)
                .join("bus", "bar", "ignition", "plus")
                .phases(new Phase("start", 10, 0), new Phase("cruise", 1800, 60))
                .enough(600);
    }

    private static Bench startedBy(Optional<String> starter, LoadNeed.Use starters) {
        return buttoned(starters)
                .engine(
                        new Engine(
                                new EngineLogic.One("ignition"),
                                0.3,
                                2,
                                true,
                                20,
                                new Engine.EngineStarting(starter, 0.5, 25, Optional.empty())))
                .starting(starter.isPresent() ? Map.of("button", "on") : Map.of());
    }

    private static final Failure BUTTON_STICKS =
            Failure.levers("button sticks", Map.of("button", "on"));

    /** Nobody can shed it, and the engine lasts as with any load that draws as much. */
    @Test
    void aStarterThatIsFedThoughNobodyTurnsTheKeyRunsOn() throws UntoldStory {
        Bench starter = startedBy(Optional.of("starter"), new LoadNeed.Use(Set.of("start"), 1));
        Story story = starter.timeline().tell(BUTTON_STICKS, Pilot.PLANNED);
        double from = Telling.when(story, StoryEvent.Kind.LOAD_STARTS, "starter");
        assertEquals(0.5, from, 1e-9);
        double lasts = story.engine().endurance().seconds();

        Story heater =
                startedBy(Optional.empty(), ALWAYS).timeline().tell(BUTTON_STICKS, Pilot.PLANNED);
        assertEquals(heater.engine().endurance().seconds(), lasts, 1);
        // 20 Ah at 152 A
        assertEquals(20 * 3600 / 152.0, lasts, 60);

        Setting shed =
                Setting.with(Pilot.PLANNED).with(new Setting.Shedding(true, Set.of("starter")));
        Story spared = starter.timeline().tellAsFar(BUTTON_STICKS, shed);
        assertEquals(lasts, spared.engine().endurance().seconds(), 1);
    }

    @Test
    void aStarterThatStopsBeingFedIsAtRestAgain() throws UntoldStory {
        Bench bench =
                startedBy(Optional.of("starter"), new LoadNeed.Use(Set.of("start"), 1))
                        .cue("low", new Cue.LowVolts(new Terminal("bus", "bar"), 12.0, 1))
                        .procedure("let go", List.of("low"), 10, Map.of("button", "off"));
        Story story = bench.timeline().tell(BUTTON_STICKS, Pilot.PLANNED);
        assertTrue(
                story.engine().endurance().seconds() > 3600, story.engine().endurance().toString());
    }

    @Test
    void aStarterWithASolenoidOfItsOwnStandsStillOnALiveFeed() throws UntoldStory {
        Story story = bench(20, Optional.empty()).timeline().tell(FEED_OFF, Pilot.PLANNED);
        assertEquals(List.of(), story.of(StoryEvent.Kind.LOAD_STARTS));
    }
}
