package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import stillturning.model.Procedure.Execution;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** A lamp that shows nothing although what it watches happens: by hand. */
class DeadLampTest {

    private static final Failure DEAD = Failure.dark("light");

    /** 10 Ah without loss, 5 A that the engine needs and 15 A that it does not. */
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
                .join("computer", "plus", "bus", "bar")
                .join("lights", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true)
                .cue("light", new Cue.AlternatorOut("alternator"));
    }

    private static Bench byHand() {
        return flying().procedure("shed", "light", 60, Map.of(), "lights");
    }

    private static Story told(Bench bench, boolean dead) throws UntoldStory {
        Failure out = bench.failure("alternator: regulator open");
        return bench.timeline().tell(dead ? out.and(DEAD) : out, Pilot.PLANNED);
    }

    @Test
    void nobodySeesItAndNobodySheds() throws UntoldStory {
        Bench bench = byHand();
        assertEquals(0, Telling.when(told(bench, false), StoryEvent.Kind.CUE, "light"));
        assertEquals(60, Telling.when(told(bench, false), StoryEvent.Kind.PILOT, "shed"));
        Story blind = told(bench, true);
        assertEquals(List.of(), blind.of(StoryEvent.Kind.CUE));
        assertEquals(List.of(), blind.of(StoryEvent.Kind.PILOT));
        // 10 Ah at 20 A last half an hour, and a moment until the engine has noticed
        assertEquals(1800.32, blind.engine().endurance().seconds(), 1e-3);
        assertFalse(blind.aftermath().actedPilot());
    }

    @Test
    void byItselfItChangesNothing() throws UntoldStory {
        Bench bench = byHand();
        Story story = bench.timeline().tell(DEAD, Pilot.PLANNED);
        assertTrue(story.engine().runningAtEnd());
        assertEquals(1, story.happenings().size(), story.happenings().toString());
    }

    /** What acts by itself has the sensor and needs no lamp. */
    @Test
    void anAutomaticActsAllTheSame() throws UntoldStory {
        Bench bench =
                flying().procedure(
                                new Procedure(
                                        "shed",
                                        List.of("light"),
                                        60,
                                        Map.of(),
                                        List.of("lights"),
                                        new Execution(Optional.of("computer"), 0)));
        Story story = told(bench, true);
        assertEquals(List.of(), story.of(StoryEvent.Kind.CUE));
        assertEquals(60, Telling.when(story, StoryEvent.Kind.AUTOMATIC, "shed"));
    }

    /** An engine that falls silent and a display that shares its load's fate need no lamp. */
    @Test
    void onlyWhatALampShowsCanBeHiddenByOne() {
        Bench bench =
                byHand().cue("dark radio", new Cue.LoadStops("lights"))
                        .cue(
                                new Cue(
                                        "page",
                                        new Cue.AlternatorOut("alternator"),
                                        Optional.of("lights")));
        assertEquals(List.of(DEAD), FailureCatalogue.deadLampsOf(bench.candidate()));
    }
}
