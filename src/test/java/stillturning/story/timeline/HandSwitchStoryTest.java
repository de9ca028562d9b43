package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.parts.Part;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.switching.ChangeoverSwitch;
import stillturning.parts.switching.KeySwitch;
import stillturning.parts.switching.SelectorSwitch;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Pilot;
import stillturning.story.StartAttempt;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Switches that take a pilot from one battery to another, and the key that starts the engine. */
class HandSwitchStoryTest {

    private static final ChangeoverSwitch CHANGEOVER =
            new ChangeoverSwitch(Bench.tag("source"), 1, 0.005);
    private static final SelectorSwitch SELECTOR = new SelectorSwitch(Bench.tag("source"), 0.0005);

    /** A computer behind a switch between two batteries of 10 Ah, moved when a bus runs low. */
    private static Bench between(Part source, String one, String other, String position) {
        return new Bench()
                .battery("first", 10, 0.02, 1)
                .battery("second", 10, 0.02, 1)
                .part(source)
                .lever("source", position)
                .bus("bus")
                .join("first", "plus", "source", one)
                .join("second", "plus", "source", other)
                .join("source", "common", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new Engine(new EngineLogic.One("computer"), 0.3, 2, true, 30))
                .cue("low volts", new Cue.LowVolts(new Terminal("bus", "bar"), 11, 0))
                .procedure("other battery", "low volts", 10, Map.of("source", other));
    }

    private static Story together(Bench bench, String... failures) throws UntoldStory {
        List<Hit> hits =
                Stream.of(failures).flatMap(name -> bench.failure(name).hits().stream()).toList();
        return bench.timeline().tell(new Failure("both", hits, Map.of()), Pilot.PLANNED);
    }

    private static double lasts(Story story) {
        return assertInstanceOf(Lasts.class, story.engine().endurance()).seconds();
    }

    /** Ten seconds for the pilot, half a second to boot, two to catch. */
    @Test
    void aChangeoverSwitchBringsTheEngineBackOnTheOtherBattery() throws UntoldStory {
        Bench bench = between(CHANGEOVER, "a", "b", "a");
        Story story = Telling.planned(bench, "first: disconnects itself");
        double restarts = Telling.when(story, StoryEvent.Kind.ENGINE_RESTARTS, "engine");
        assertEquals(10 + 0.5 + 2, restarts, 1e-9);
        assertEquals(2 * 3600, lasts(story), 60);
        Story stuck = together(bench, "first: disconnects itself", "source: stuck closed a");
        assertEquals(0.02 + 0.3, lasts(stuck), 1e-9);
    }

    /** The voltage is low before the computer stops, and between 1 and 2 nothing goes dark. */
    @Test
    void aSelectorGoesFromABatteryThatRunsDownToTheOtherWithoutAnInterruption() throws UntoldStory {
        Bench bench = between(SELECTOR, "1", "2", "1");
        Story story = Telling.planned(bench, "source: stuck closed 1");
        assertEquals(0, story.engine().longestInterruptionSeconds());
        assertEquals(4 * 3600, lasts(story), 120);
    }

    @Test
    void oneWiperTakesBothBatteriesAndOneContactOneOfThem() throws UntoldStory {
        Bench bench = between(SELECTOR, "1", "2", "both");
        assertEquals(0.02 + 0.3, lasts(Telling.planned(bench, "source: wiper open")), 1e-9);
        Story one = Telling.unaided(bench, "source: contact 1 open");
        assertEquals(0, one.engine().longestInterruptionSeconds());
        assertEquals(2 * 3600, lasts(one), 60);
    }

    @Test
    void everyOtherPositionOfASelectorCanBeLeftAndOnlyOffIsSeenAtOnce() {
        Bench bench = between(SELECTOR, "1", "2", "both");
        assertEquals(
                List.of(
                        new Misplaced("source", "both", "off"),
                        new Misplaced("source", "both", "1"),
                        new Misplaced("source", "both", "2")),
                FailureCatalogue.leftSwitchesOf(bench.candidate()));
    }

    /** The computer at on, and at start the coil of the contactor that feeds the starter. */
    private static Bench keyed() {
        LoadNeed.Use always = new LoadNeed.Use(Set.of("start", "cruise"), 1);
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.01, 1))
                .join("battery", "minus", "ground", "stud")
                .part(new KeySwitch(Bench.tag("key"), 0.005))
                .lever("key", "on")
                .starting(Map.of("key", "start"))
                .contactor("starter-relay")
                .join("battery", "plus", "key", "in")
                .join("battery", "plus", "starter-relay", "in")
                .join("key", "start", "starter-relay", "coil-plus")
                .join("starter-relay", "coil-minus", "ground", "stud")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .use("computer", always, 9)
                .join("key", "on", "computer", "plus")
                .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                .join("starter-relay", "out", "starter", "plus")
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

    private static StartAttempt start(Bench bench) throws UntoldStory {
        return Timeline.start(bench.study(), bench.candidate(), false).orElseThrow();
    }

    @Test
    void theKeyHeldAtStartFeedsTheStarterAndTheComputer() throws UntoldStory {
        StartAttempt start = start(keyed());
        assertTrue(start.runs(), start.toString());
        assertEquals(150, start.starterAmps(), 1e-6);
        StartAttempt atOn = start(keyed().starting(Map.of()));
        assertFalse(atOn.runs(), atOn.toString());
        assertEquals(0, atOn.starterAmps(), 1e-6);
    }

    @Test
    void aKeyThatIsStuckOpenStopsTheEngineAndOneStuckAtStartEngagesTheStarter() throws UntoldStory {
        assertEquals(0.02 + 0.3, lasts(Telling.unaided(keyed(), "key: stuck open")), 1e-9);
        Story stuck = Telling.unaided(keyed(), "key: start stuck closed");
        Telling.when(stuck, StoryEvent.Kind.CONTACTS_CLOSE, "starter-relay");
    }

    @Test
    void nobodyCanLeaveAKeyAtStart() {
        assertEquals(
                List.of(new Misplaced("key", "on", "off")),
                FailureCatalogue.leftSwitchesOf(keyed().candidate()));
    }
}
