package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.parts.element.Channel.Switching;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.protection.ElectronicProtector;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Electronic protectors of which each has a logic of its own. */
class ElectronicProtectorStoryTest {

    private static Part protector(String id, boolean closedByDefault) {
        return new ElectronicProtector(
                Bench.tag(id),
                new Switching(0.006, 100),
                10,
                new Demand(DemandKind.CONSTANT_POWER, 0.005, 12),
                closedByDefault);
    }

    /** A computer and a radio on one bus, each behind a protector of its own. */
    private static Bench bench(boolean closedByDefault) {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 40, 0.05, 1))
                        .join("battery", "minus", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true);
        for (String load : List.of("computer", "radio")) {
            String id = load + "-protector";
            bench.part(protector(id, closedByDefault))
                    .bus(load + "-stub")
                    .join(id, "in", "bus", "bar")
                    .join(id, "minus", "ground", "stud")
                    .join(id, "out", load + "-stub", "bar")
                    .load(
                            load,
                            DemandKind.CONSTANT_CURRENT,
                            1,
                            new Tolerance(9, 10, 1e-3, 0.1, 40, 1))
                    .join(load, "plus", load + "-stub", "bar");
        }
        return bench;
    }

    private static boolean works(Story story, String load) {
        return story.aftermath().working().contains(load);
    }

    @Test
    void aShortBehindOneTripsItBeforeTheOtherLoadNotices() throws UntoldStory {
        Story story = Telling.unaided(bench(false), "radio-stub: short to ground");
        assertTrue(Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "radio-protector") < 1e-4);
        assertFalse(works(story, "radio"));
        assertTrue(works(story, "computer"));
    }

    @Test
    void oneThatDoesNotTripPullsTheBusDown() throws UntoldStory {
        Bench bench = bench(false);
        List<Hit> hits =
                Stream.of(
                                "radio-protector: does not trip when it should",
                                "radio-stub: short to ground")
                        .flatMap(name -> bench.failure(name).hits().stream())
                        .toList();
        Story story = bench.timeline().tell(new Failure("both", hits, Map.of()), Pilot.NEVER);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertFalse(works(story, "computer"));
    }

    @Test
    void aDeadLogicTakesItsOwnChannelToItsDefaultAndNoOther() throws UntoldStory {
        for (boolean closed : List.of(true, false)) {
            Story story = Telling.unaided(bench(closed), "radio-protector: logic dead");
            assertEquals(closed, works(story, "radio"));
            assertTrue(works(story, "computer"));
        }
    }

    @Test
    void itsLeverHasThePartsName() throws UntoldStory {
        Failure off = Failure.levers("radio off", Map.of("radio-protector", "off"));
        Story story = bench(true).timeline().tell(off, Pilot.NEVER);
        assertFalse(works(story, "radio"));
        assertTrue(works(story, "computer"));
    }

    @Test
    void oneThatIsStuckOnDoesNotObeyItsLever() throws UntoldStory {
        Bench bench = bench(false);
        Failure stuck =
                new Failure(
                        "stuck on, lever off",
                        bench.failure("radio-protector: stuck on").hits(),
                        Map.of("radio-protector", "off"));
        assertTrue(works(bench.timeline().tell(stuck, Pilot.NEVER), "radio"));
    }
}
