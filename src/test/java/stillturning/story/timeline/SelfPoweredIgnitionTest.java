package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.source.SelfPoweredIgnition;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.structure.Structure;
import stillturning.structure.StructureFindings;

/** An ignition that needs no bus, and the wire that stops it. */
class SelfPoweredIgnitionTest {

    /** The engine runs on a magneto, whose kill lead goes to an open switch and on to ground. */
    private static Bench flying() {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("radio", DemandKind.CONSTANT_POWER, 2, Bench.HARDY)
                .join("radio", "plus", "bus", "bar")
                .ignition(new SelfPoweredIgnition(Bench.tag("magneto"), 10, 1))
                .wire("lead", 1, 0.02)
                .closedSwitch("kill", "off")
                .join("magneto", "kill", "lead", "a")
                .join("lead", "b", "kill", "in")
                .join("kill", "out", "ground", "stud")
                .engine(new EngineLogic.One("magneto"), false);
    }

    @Test
    void itSparksWithoutAnyBus() throws UntoldStory {
        for (String lost : List.of("battery: disconnects itself", "bus: short to ground")) {
            Story story = Telling.unaided(flying(), lost);
            assertTrue(story.engine().runningAtEnd(), lost);
            assertEquals(0, story.engine().longestInterruptionSeconds(), lost);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "magneto: stops working",
                "magneto: kill short",
                "lead: chafed to ground",
                "kill: stuck closed"
            })
    void whatGroundsItsLeadStopsTheEngine(String failure) throws UntoldStory {
        Story story = Telling.unaided(flying(), failure);
        assertEquals(0.3, story.engine().endurance().seconds(), 1e-6);
    }

    @Test
    void theSwitchStopsIt() throws UntoldStory {
        assertFalse(off(Failure.levers("off", Map.of("kill", "on"))).engine().runningAtEnd());
    }

    @ParameterizedTest
    @ValueSource(strings = {"lead: open", "magneto: kill open", "kill: stuck open"})
    void aBrokenLeadIsNotNoticedUntilItCannotBeSwitchedOff(String failure) throws UntoldStory {
        Bench bench = flying();
        assertTrue(Telling.unaided(bench, failure).engine().runningAtEnd());
        Failure then = bench.failure(failure).and(Failure.levers("off", Map.of("kill", "on")));
        assertTrue(bench.timeline().tell(then, Pilot.NEVER).engine().runningAtEnd());
    }

    private static Story off(Failure failure) throws UntoldStory {
        return flying().timeline().tell(failure, Pilot.NEVER);
    }

    @Test
    void itIsNoSourceAndNoConsumer() throws UntoldStory {
        Bench bench = flying();
        assertEquals(Set.of("battery"), bench.timeline().normal().sourceAmps().keySet());
        assertTrue(
                bench.timeline().normal().feeds().stream()
                        .noneMatch(
                                f -> f.source().equals("magneto") || f.load().equals("magneto")));
        assertEquals(
                0, bench.study().aircraft().load("magneto").orElseThrow().averageAmps("cruise"));
        Story story = Telling.unaided(bench, "lead: chafed to ground");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.SOURCE_STOPS));
    }

    @Test
    void theGraphAsksForNoFeedOfIt() {
        Bench bench = flying();
        StructureFindings found = Structure.of(bench.study().aircraft(), bench.candidate());
        assertTrue(found.engineSupplied());
        assertEquals(List.of(), found.unsupplied());
        assertEquals(List.of(), found.loads());
        assertEquals(
                List.of("magneto"),
                found.singlePoints().stream().map(StructureFindings.SinglePoint::part).toList());
    }
}
