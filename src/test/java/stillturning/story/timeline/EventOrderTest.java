package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.Endurance.AtLeast;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** The situations in which event-driven simulations go wrong, one by one. */
class EventOrderTest {

    private static final Failure NOTHING = Failure.levers("nothing", Map.of());

    private static Tolerance minimum(double volts, double rideThroughSeconds) {
        return new Tolerance(volts, volts, rideThroughSeconds, 0.5, 40, 1);
    }

    private static Bench battery() {
        return new Bench()
                .part(Shelf.lead("battery", 10, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus", "feed")
                .join("battery", "plus", "bus", "feed")
                .load("computer", DemandKind.CONSTANT_CURRENT, 10, minimum(6, 0))
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static List<String> parts(Story story, StoryEvent.Kind kind) {
        return story.of(kind).stream().map(StoryEvent::part).toList();
    }

    @Test
    void twoAtOneInstantHappenInTheOrderOfTheParts() throws UntoldStory {
        Bench bench =
                battery()
                        .load("zulu", DemandKind.CONSTANT_POWER, 1, minimum(6, 0.01))
                        .load("alpha", DemandKind.CONSTANT_POWER, 1, minimum(7, 0.01))
                        .join("zulu", "plus", "bus", "bar")
                        .join("alpha", "plus", "bus", "bar");
        Story story = Telling.unaided(bench, "bus: feed open");
        assertEquals(
                List.of("computer", "zulu", "alpha"), parts(story, StoryEvent.Kind.LOAD_STOPS));
        assertEquals(
                Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "zulu"),
                Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "alpha"));
    }

    @Test
    void ofTwoAutomaticsAtOneInstantTheLaterInTheCandidateHasTheLastWord() throws UntoldStory {
        for (String last : List.of("on", "off")) {
            String first = last.equals("on") ? "off" : "on";
            Bench bench =
                    battery()
                            .closedSwitch("switch", "off")
                            .join("battery", "plus", "switch", "in")
                            .join("switch", "out", "bus", "bar")
                            .load("logic", DemandKind.CONSTANT_CURRENT, 1, minimum(6, 0))
                            .join("battery", "plus", "logic", "plus")
                            .cue("dark", new Cue.LoadStops("computer"))
                            .procedure(byItself("one", first))
                            .procedure(byItself("two", last));
            Story story = Telling.planned(bench, "bus: feed open");
            assertEquals(List.of("one", "two"), parts(story, StoryEvent.Kind.AUTOMATIC));
            assertEquals(
                    last.equals("on") ? 1 : 0, Telling.count(story, StoryEvent.Kind.LOAD_RESTARTS));
        }
    }

    private static Procedure byItself(String name, String position) {
        return new Procedure(
                name,
                List.of("dark"),
                0.1,
                Map.of("switch", position),
                List.of(),
                new Procedure.Execution(Optional.of("logic"), 0));
    }

    /** A pilot has one pair of hands, and takes 2 s from one switch to the next. */
    @Test
    void ofTwoProceduresAtOneInstantThePilotDoesOneAfterTheOther() throws UntoldStory {
        Bench bench =
                battery()
                        .closedSwitch("switch", "off")
                        .closedSwitch("other", "off")
                        .join("battery", "plus", "switch", "in")
                        .join("battery", "plus", "other", "in")
                        .join("switch", "out", "bus", "bar")
                        .join("other", "out", "bus", "bar")
                        .cue("dark", new Cue.LoadStops("computer"))
                        .procedure("one", "dark", 0.1, Map.of("switch", "off"))
                        .procedure("two", "dark", 0.1, Map.of("other", "on"));
        Story story = Telling.planned(bench, "bus: feed open");
        double one = Telling.when(story, StoryEvent.Kind.PILOT, "one");
        assertEquals(one + 2, Telling.when(story, StoryEvent.Kind.PILOT, "two"), 1e-9);
    }

    @Test
    void aSagThatEndsBeforeTheDelayCancelsWhatWasAboutToHappen() throws UntoldStory {
        // the computer's dark spell begins at 0; the pilot ends it at 0.1 s, the radio's
        // ride-through would have ended it at 0.11 s
        Bench bench =
                battery()
                        .closedSwitch("switch", "off")
                        .join("battery", "plus", "switch", "in")
                        .join("switch", "out", "bus", "bar")
                        .load("radio", DemandKind.CONSTANT_POWER, 1, minimum(6, 0.11))
                        .load("clock", DemandKind.CONSTANT_POWER, 1, minimum(6, 0.09))
                        .join("radio", "plus", "bus", "bar")
                        .join("clock", "plus", "bus", "bar")
                        .cue("dark", new Cue.LoadStops("computer"))
                        .procedure("other feed", "dark", 0.1, Map.of("switch", "on"));
        Story story =
                bench.timeline()
                        .tell(bench.failure("bus: feed open"), Setting.with(Pilot.PLANNED), 10);
        assertEquals(List.of("computer", "clock"), parts(story, StoryEvent.Kind.LOAD_STOPS));
        assertEquals(0.6, Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "clock"), 1e-9);
    }

    @Test
    void oneEventCausedByAnothersChangeNamesIt() throws UntoldStory {
        Bench bench =
                battery()
                        .part(Shelf.fuse("fuse", 5))
                        .load("radio", DemandKind.CONSTANT_POWER, 1, minimum(6, 0))
                        .bus("hub")
                        .join("bus", "bar", "fuse", "in")
                        .join("fuse", "out", "hub", "bar")
                        .join("radio", "plus", "hub", "bar")
                        .cue("radio dark", new Cue.LoadStops("radio"));
        Story story = Telling.unaided(bench, "hub: short to ground");
        assertEquals(
                List.of(
                        "FAILURE hub <- nothing",
                        "LOAD_STOPS computer <- FAILURE hub",
                        "LOAD_STOPS radio <- FAILURE hub",
                        "ENGINE_INTERRUPTED engine <- LOAD_STOPS computer",
                        "CUE radio dark <- LOAD_STOPS radio",
                        "PROTECTOR_OPENS fuse <- FAILURE hub",
                        "LOAD_RESTARTS computer <- PROTECTOR_OPENS fuse"),
                story.happenings().stream()
                        .map(h -> named(h) + " <- " + cause(story, h))
                        .filter(line -> !line.contains("ENGINE_STOPS"))
                        .limit(7)
                        .toList());
    }

    private static String named(StoryEvent happening) {
        return happening.kind() + " " + happening.part();
    }

    private static String cause(Story story, StoryEvent happening) {
        return happening.cause() < 0 ? "nothing" : named(story.happenings().get(happening.cause()));
    }

    @Test
    void whatIsAlreadyTrueAtTheFailureHappensAtZero() throws UntoldStory {
        Story story = Telling.unaided(battery(), "bus: feed open");
        assertEquals(0, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"));
        assertEquals(0, Telling.when(story, StoryEvent.Kind.ENGINE_INTERRUPTED, "engine"));
        assertEquals(0.3, Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine"));
    }

    @Test
    void anEventExactlyAtTheHorizonStillHappens() throws UntoldStory {
        Bench bench = battery();
        Failure open = bench.failure("bus: feed open");
        Story at = bench.timeline().tell(open, Setting.with(Pilot.NEVER), 0.3);
        assertEquals(0.3, assertInstanceOf(Lasts.class, at.engine().endurance()).seconds());
        Story before = bench.timeline().tell(open, Setting.with(Pilot.NEVER), 0.3 - 1e-6);
        assertEquals(
                0.3 - 1e-6, assertInstanceOf(AtLeast.class, before.engine().endurance()).seconds());
        assertEquals(before.endSeconds(), before.engine().endurance().seconds());
    }

    @Test
    void aBatteryThatIsEmptyExactlyAtTheHorizonIsSaidToBe() throws UntoldStory {
        // 10 Ah at 10 A: an hour; the current is found to a part in 1e10
        Story story = battery().timeline().tell(NOTHING, Setting.with(Pilot.NEVER), 3600 + 4e-7);
        assertEquals(3600, Telling.when(story, StoryEvent.Kind.BATTERY_EMPTY, "battery"), 3.6e-7);
    }

    @Test
    void aVoltageThatTouchesItsLimitWithoutCrossingItTriggersNothing() throws UntoldStory {
        Bench bench = battery();
        double volts = bench.timeline().normal().busVolts().getOrDefault("bus", 0.0);
        bench.cue("touched", new Cue.LowVolts(new Terminal("bus", "bar"), volts, 0))
                .cue("crossed", new Cue.LowVolts(new Terminal("bus", "bar"), volts + 1e-6, 0));
        Timeline timeline = bench.timeline();
        assertEquals(List.of("crossed"), timeline.normal().cuesShowing());
    }

    @Test
    void aLevelThatIsReachedAndLeftWithinOneStepOfTheBatteryIsNotMissed() throws UntoldStory {
        // the two limits are 0.1 mV apart on a slope of 0.9 V: 0.4 s of an hour
        Bench bench =
                battery()
                        .cue("first", new Cue.LowVolts(new Terminal("bus", "bar"), 12.2, 0))
                        .cue("second", new Cue.LowVolts(new Terminal("bus", "bar"), 12.1999, 0));
        Story story = bench.timeline().tell(NOTHING, Pilot.NEVER);
        // with x = (q - 0.5) / 0.25: 12.24 + 0.21 x - 0.2 (1.15 - 0.1 x) - feed stud 1 mV
        double x = (12.2 - 12.24 + 0.23 + 0.001) / 0.23;
        double expected = (1 - (0.5 + 0.25 * x)) * 3600;
        assertEquals(expected, Telling.when(story, StoryEvent.Kind.CUE, "first"), 1e-2);
        assertEquals(
                1e-4 / 0.92 * 3600,
                Telling.when(story, StoryEvent.Kind.CUE, "second")
                        - Telling.when(story, StoryEvent.Kind.CUE, "first"),
                1e-4);
    }

    @Test
    void nothingHappensInACandidateThatNothingAilsAndTheStoryEndsAtOnce() throws UntoldStory {
        Bench bench =
                battery()
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar");
        Story story = bench.timeline().tell(NOTHING, Pilot.PLANNED);
        assertEquals(1, story.happenings().size());
        assertEquals(0, story.endSeconds());
        assertTrue(story.engine().runningAtEnd());
    }
}
