package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Relays that join a second battery while the first is charged, or change over to another. */
class RelayStoryTest {

    /** A main bus with much to feed, and a second battery behind the relay for the engine alone. */
    private static Bench charged() {
        return new Bench()
                .battery("main", 20, 0.02, 1)
                .battery("second", 10, 0.02, 1)
                .part(Shelf.alternator("alternator", 14.2, 45, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .bus("engine-bus")
                .join("main", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .part(Shelf.chargeRelay("relay", 13.3, 12.8))
                .wire("sensing-return", 1, 0.02)
                .join("relay", "in", "bus", "bar")
                .join("relay", "out", "engine-bus", "bar")
                .join("relay", "minus", "sensing-return", "a")
                .join("sensing-return", "b", "ground", "stud")
                .join("second", "plus", "engine-bus", "bar")
                .load("lights", DemandKind.CONSTANT_CURRENT, 20, Bench.HARDY)
                .join("lights", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "engine-bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Story together(Bench bench, String... failures) throws UntoldStory {
        List<Hit> hits =
                Stream.of(failures).flatMap(name -> bench.failure(name).hits().stream()).toList();
        return bench.timeline().tell(new Failure("both", hits, Map.of()), Pilot.NEVER);
    }

    private static double lasts(Story story) {
        return assertInstanceOf(Lasts.class, story.engine().endurance()).seconds();
    }

    /** 10 Ah at 5 A, all of it for the computer: the lights can no longer draw on it. */
    @Test
    void aChargeRelayOpensAfterItsTimeOnceNothingChargesAndKeepsTheSecondBattery()
            throws UntoldStory {
        Story story = Telling.unaided(charged(), "alternator: no output");
        assertEquals(5, Telling.when(story, StoryEvent.Kind.CONTACTS_OPEN, "relay"), 1e-6);
        assertEquals(2 * 3600, lasts(story), 60);
    }

    /** 30 Ah for the computer, the lights and the alternator's field at about 12.3 V over 4 ohm. */
    @Test
    void aWeldedChargeRelayLetsTheLightsDrainBothBatteries() throws UntoldStory {
        Story story = together(charged(), "alternator: no output", "relay: welded");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.CONTACTS_OPEN));
        assertEquals(30 / (25 + 12.3 / 4) * 3600, lasts(story), 60);
    }

    @Test
    void aBlindChargeRelayLeavesTheSecondBatteryUncharged() throws UntoldStory {
        Story healthy = Telling.unaided(charged(), "lights: stops working");
        assertInstanceOf(NotLimited.class, healthy.engine().endurance());
        assertEquals(2 * 3600, lasts(Telling.unaided(charged(), "relay: does not close")), 60);
    }

    @Test
    void aChargeRelayWhoseReturnHasComeOffOpens() throws UntoldStory {
        Story story = Telling.unaided(charged(), "sensing-return: open");
        assertEquals(5, Telling.when(story, StoryEvent.Kind.CONTACTS_OPEN, "relay"), 1e-6);
        assertEquals(2 * 3600, lasts(story), 60);
    }

    /** The computer on the main battery while that feeds the coil, else on the standby battery. */
    private static Bench changedOver() {
        return new Bench()
                .battery("main", 20, 0.02, 1)
                .battery("standby", 5, 0.02, 1)
                .part(Shelf.changeoverRelay("relay"))
                .wire("coil-feed", 1, 0.02)
                .wire("main-feed", 1, 0.02)
                .join("main", "plus", "main-feed", "a")
                .join("main", "plus", "coil-feed", "a")
                .join("coil-feed", "b", "relay", "coil-plus")
                .join("relay", "coil-minus", "ground", "stud")
                .join("main-feed", "b", "relay", "normally-open")
                .join("standby", "plus", "relay", "normally-closed")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "relay", "common")
                .engine(new EngineLogic.One("computer"), true);
    }

    @Test
    void aChangeoverRelayTakesTheStandbyBatteryBeforeTheComputerNotices() throws UntoldStory {
        Story story = Telling.unaided(changedOver(), "main: disconnects itself");
        assertEquals(0.008, Telling.when(story, StoryEvent.Kind.CONTACTS_OPEN, "relay"), 1e-9);
        assertEquals(0, story.engine().longestInterruptionSeconds());
        assertEquals(3600, lasts(story), 60);
    }

    @Test
    void aCoilThatIsOpenOrShortedPutsTheComputerOnTheStandbyBattery() throws UntoldStory {
        for (String mode : List.of("relay: coil open", "relay: coil shorted")) {
            Story story = Telling.unaided(changedOver(), mode);
            assertEquals(0, story.engine().longestInterruptionSeconds(), mode);
            assertEquals(3600, lasts(story), 60, mode);
        }
    }

    /** A contactor that feeds the computer; its coil hangs on a wire, with or without a breaker. */
    private static Bench contactorFed(boolean protectedCoil) {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.02, 1)
                        .contactor("contactor")
                        .wire("coil-feed", 1, 0.02)
                        .join("battery", "plus", "contactor", "in")
                        .join("coil-feed", "b", "contactor", "coil-plus")
                        .join("contactor", "coil-minus", "ground", "stud")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "contactor", "out")
                        .engine(new EngineLogic.One("computer"), true);
        return protectedCoil
                ? bench.breaker("coil-breaker", 5)
                        .join("battery", "plus", "coil-breaker", "in")
                        .join("coil-breaker", "out", "coil-feed", "a")
                : bench.join("battery", "plus", "coil-feed", "a");
    }

    /** 12.7 V over 0.02 + 0.02 + 0.02 + 0.005 ohm: 195 A. */
    @Test
    void aShortedCoilOpensItsBreakerAndItsContactsFallOpen() throws UntoldStory {
        Story story = Telling.unaided(contactorFed(true), "contactor: coil shorted");
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertEquals(0.02 + 0.3, lasts(story), 1e-9);
    }

    @Test
    void aShortedCoilWithoutProtectorMeltsTheWireToIt() throws UntoldStory {
        Story story = Telling.unaided(contactorFed(false), "contactor: coil shorted");
        assertEquals("coil-feed", story.of(StoryEvent.Kind.WIRE_MELTS).get(0).part());
        assertEquals(0.02 + 0.3, lasts(story), 1e-9);
    }

    /** The field's short is on the bus: what feeds it opens, and the alternator is gone. */
    @Test
    void aShortedFieldTakesTheAlternatorAndItsBreaker() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.02, 1)
                        .alternator("alternator", 40)
                        .breaker("field-breaker", 5)
                        .join("battery", "plus", "alternator", "output")
                        .join("alternator", "output", "field-breaker", "in")
                        .join("field-breaker", "out", "alternator", "field")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "battery", "plus")
                        .engine(new EngineLogic.One("computer"), true);
        Story story = Telling.unaided(bench, "alternator: regulator shorted");
        assertEquals("field-breaker", story.of(StoryEvent.Kind.PROTECTOR_OPENS).get(0).part());
        assertEquals(20.0 / 5 * 3600, lasts(story), 60);
    }

    @Test
    void aBladeWeldedToTheMainBatteryDiesWithIt() throws UntoldStory {
        Bench bench = changedOver();
        Story welded = together(bench, "relay: welded normally open", "main: disconnects itself");
        assertEquals(0.02 + 0.3, lasts(welded), 1e-9);
        Story alone = Telling.unaided(bench, "relay: welded normally open");
        assertEquals(20 / (5 + 12.3 / 90) * 3600, lasts(alone), 120);
    }

    /** The coil is still fed: what feeds the contact is lost, and nothing changes over. */
    @Test
    void aChangeoverRelayDoesNotSeeAWireThatIsLostBehindItsCoil() throws UntoldStory {
        Story story = Telling.unaided(changedOver(), "main-feed: open");
        assertEquals(0.02 + 0.3, lasts(story), 1e-9);
    }
}
