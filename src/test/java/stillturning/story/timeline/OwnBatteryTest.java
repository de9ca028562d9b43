package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance.OwnBattery;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** An instrument with a battery of its own. */
class OwnBatteryTest {

    private static final OwnBattery HALF_AN_HOUR = new OwnBattery(1800, 7200);

    private static Bench flying() {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .load("horizon", DemandKind.CONSTANT_POWER, 1, Bench.HARDY.with(HALF_AN_HOUR))
                .wire("feed", 1, 0.02)
                .join("bus", "bar", "feed", "a")
                .join("horizon", "plus", "feed", "b")
                .engine(new EngineLogic.One("computer"), false);
    }

    @Test
    void itWorksOnForItsTimeOnceItsFeedIsLost() throws UntoldStory {
        Story story = Telling.unaided(flying(), "feed: open");
        assertEquals(1800 + 0.02, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "horizon"), 1e-6);
        String words =
                story.of(StoryEvent.Kind.LOAD_STOPS).stream()
                        .filter(e -> e.part().equals("horizon"))
                        .findFirst()
                        .orElseThrow()
                        .words();
        assertEquals("stops: no supply, and its own battery is empty", words);
        assertFalse(story.aftermath().working().contains("horizon"));
    }

    /** As displays do, common practice; report CEN16LA167 (NTSB) tells of a pilot who saw it. */
    @Test
    void itSaysThatItHasGoneOver() throws UntoldStory {
        Story story = Telling.unaided(flying(), "feed: open");
        assertEquals(1, Telling.when(story, StoryEvent.Kind.LOAD_ON_ITS_OWN, "horizon"), 1e-6);
        String words = story.of(StoryEvent.Kind.LOAD_ON_ITS_OWN).get(0).words();
        assertEquals("goes over to its own battery: no supply", words);
    }

    /** A dip that a fuse ends at once is no loss of its feed. */
    @Test
    void itSaysNothingOfADip() throws UntoldStory {
        Bench bench =
                flying().part(Shelf.fuse("fuse", 5))
                        .join("bus", "bar", "fuse", "in")
                        .load("radio", DemandKind.CONSTANT_POWER, 1, Bench.HARDY)
                        .join("radio", "plus", "fuse", "out");
        Story story = Telling.unaided(bench, "radio: input short");
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertTrue(Telling.when(story, StoryEvent.Kind.LOAD_ON_ITS_OWN, "horizon") > 600);
    }

    @Test
    void itOutlivesTheBusByItsTime() throws UntoldStory {
        Story story = Telling.unaided(flying(), "battery: disconnects itself");
        assertEquals(0.02, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"), 1e-6);
        assertEquals(1800 + 0.02, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "horizon"), 1e-6);
    }

    @Test
    void whatFailsInsideItIsNotSavedByItsBattery() throws UntoldStory {
        Story story = Telling.unaided(flying(), "horizon: stops working");
        assertFalse(story.aftermath().working().contains("horizon"));
        assertTrue(story.aftermath().working().contains("computer"));
    }
}
