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
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.element.curve.Tripping;
import stillturning.parts.protection.CurrentLimiter;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.story.Endurance.AtLeast;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Races between protectors, and what the rest of the aircraft notices of them. */
class ProtectionTest {

    private static final double REST_VOLTS = 12.65;
    private static final double BATTERY_OHMS = 0.05;
    private static final double SHORT_OHMS = 0.005;
    private static final double BREAKER_OHMS = 0.02;
    private static final double FUSE_OHMS = 0.004;

    private static double seconds(TimeCurrentCurve curve, double amps, double rating) {
        return curve.secondsToOpen(amps / rating, Tripping.TYPICAL);
    }

    /** A battery on a bus with a computer; everything else hangs on the same bus. */
    private static Bench bench(Tolerance computer) {
        return new Bench()
                .part(Shelf.lead("battery", 40, BATTERY_OHMS, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 0.01, computer)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true)
                .bus("stub");
    }

    private static Bench inPath(Part first, Part second) {
        return bench(Bench.HARDY)
                .part(first)
                .part(second)
                .join("bus", "bar", first.id(), "in")
                .join(first.id(), "out", second.id(), "in")
                .join(second.id(), "out", "stub", "bar");
    }

    private static Part breaker(String id, double amps) {
        return new stillturning.parts.protection.Breaker(
                Bench.tag(id), amps, BREAKER_OHMS, ProtectorCurves.FAST_BREAKER);
    }

    private static double faultAmps(double pathOhms) {
        // the ground point's 0.1 mohm joint lies in the way back; the computer's 10 mA do not count
        return REST_VOLTS / (BATTERY_OHMS + pathOhms + SHORT_OHMS + 1e-4);
    }

    @Test
    void ofAFuseAndABreakerOfOneRatingTheFuseOpensWhenItsCurveSays() throws UntoldStory {
        Story story =
                Telling.unaided(
                        inPath(breaker("breaker", 10), Shelf.fuse("fuse", 10)),
                        "stub: short to ground");
        double amps = faultAmps(BREAKER_OHMS + FUSE_OHMS);
        double expected = seconds(ProtectorCurves.BLADE_FUSE, amps, 10);
        assertEquals(
                expected,
                Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "fuse"),
                1e-3 * expected);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertTrue(expected < seconds(ProtectorCurves.FAST_BREAKER, amps, 10));
    }

    @Test
    void aCurrentLimiterBearsAShortForLongerThanAFuseOfItsRating() throws UntoldStory {
        Part limiter = new CurrentLimiter(Bench.tag("limiter"), 60, FUSE_OHMS);
        Story story =
                Telling.unaided(inPath(limiter, breaker("breaker", 90)), "stub: short to ground");
        double amps = faultAmps(BREAKER_OHMS + FUSE_OHMS);
        double expected = seconds(ProtectorCurves.HIGH_CURRENT_FUSE, amps, 60);
        assertEquals(
                expected,
                Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "limiter"),
                1e-2 * expected); // the battery sags
        assertTrue(expected > 2 * seconds(ProtectorCurves.BLADE_FUSE, amps, 60));
    }

    @Test
    void aSmallBreakerBeforeABigFuseSavesTheFuse() throws UntoldStory {
        Story story =
                Telling.unaided(
                        inPath(Shelf.fuse("fuse", 30), breaker("breaker", 5)),
                        "stub: short to ground");
        double amps = faultAmps(BREAKER_OHMS + FUSE_OHMS);
        double expected = seconds(ProtectorCurves.FAST_BREAKER, amps, 5);
        assertEquals(
                expected,
                Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "breaker"),
                1e-3 * expected);
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
    }

    @Test
    void fuseAndBreakerAtTheSameInstantOpenInPathOrder() throws UntoldStory {
        Part fuse = Shelf.fuse("fuse", 10, ProtectorCurves.FAST_BREAKER);
        for (List<Part> path :
                List.of(
                        List.of(fuse, breaker("breaker", 10)),
                        List.of(breaker("breaker", 10), fuse))) {
            Story story =
                    Telling.unaided(inPath(path.get(0), path.get(1)), "stub: short to ground");
            List<StoryEvent> opened = story.of(StoryEvent.Kind.PROTECTOR_OPENS);
            assertEquals(
                    path.stream().map(Part::id).toList(),
                    opened.stream().map(StoryEvent::part).toList());
            assertEquals(opened.get(0).seconds(), opened.get(1).seconds());
        }
    }

    @Test
    void theProtectorThatDidNotOpenKeepsItsHeatAndCools() throws UntoldStory {
        // a fuse before two branches: the first short opens a breaker, the second, switched on a
        // second later, finds the fuse warm
        Bench bench =
                bench(Bench.HARDY)
                        .part(Shelf.fuse("fuse", 15))
                        .part(breaker("breaker", 5))
                        .bus("hub")
                        .bus("other")
                        .closedSwitch("switch", "off")
                        .load(
                                "radio",
                                DemandKind.CONSTANT_CURRENT,
                                0.01,
                                new Tolerance(6, 6, 0, 1, 40, 1))
                        .join("bus", "bar", "fuse", "in")
                        .join("fuse", "out", "hub", "bar")
                        .join("hub", "bar", "breaker", "in")
                        .join("breaker", "out", "stub", "bar")
                        .join("radio", "plus", "stub", "bar")
                        .join("hub", "bar", "switch", "in")
                        .join("switch", "out", "other", "bar")
                        .cue("radio dark", new Cue.LoadStops("radio"))
                        .procedure("try", "radio dark", 1, Map.of("switch", "on"));
        List<Hit> hits =
                Stream.of("stub: short to ground", "other: short to ground")
                        .flatMap(name -> bench.failure(name).hits().stream())
                        .toList();
        Story story = bench.timeline().tell(new Failure("both", hits, Map.of()), Pilot.PLANNED);
        TimeCurrentCurve curve = ProtectorCurves.BLADE_FUSE;
        double first = Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "breaker");
        double heat = first / seconds(curve, faultAmps(FUSE_OHMS + BREAKER_OHMS), 15);
        double switchedOn = Telling.when(story, StoryEvent.Kind.PILOT, "try");
        double kept = heat * Math.exp(-(switchedOn - first) / 10);
        double more = (1 - kept) * seconds(curve, faultAmps(FUSE_OHMS + 0.005), 15);
        assertEquals(1, switchedOn, 1e-6);
        assertTrue(kept > 0.1 && kept < 0.9, "the fuse is warm: " + kept);
        assertEquals(
                switchedOn + more,
                Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "fuse"),
                1e-3 * more);
    }

    @Test
    void anOverloadOpensAFuseAfterTheTimeOfItsCurve() throws UntoldStory {
        Story story = overload(20, 10);
        // sqrt(0.15 x 5) s at twice the rating: ISO 8820-3 type C class sheet, read in a second
        // source
        assertEquals(
                Math.sqrt(0.75),
                Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "fuse"),
                1e-6);
    }

    /**
     * Carried for at least 100 h at 110 %: ISO 8820-3 type C class sheet, read in a second source.
     */
    @Test
    void aLoadOfAHundredAndTenPercentNeverClears() throws UntoldStory {
        assertEquals(0, Telling.count(overload(11, 10), StoryEvent.Kind.PROTECTOR_OPENS));
    }

    private static Story overload(double amps, double rating) throws UntoldStory {
        Bench bench =
                bench(Bench.HARDY)
                        .part(Shelf.alternator("alternator", 14.2, 60, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .part(Shelf.fuse("fuse", rating))
                        .closedSwitch("switch", "off")
                        .load("heater", DemandKind.CONSTANT_CURRENT, amps, Bench.HARDY)
                        .join("bus", "bar", "fuse", "in")
                        .join("fuse", "out", "switch", "in")
                        .join("switch", "out", "heater", "plus");
        return bench.timeline()
                .tell(Failure.levers("heater on", Map.of("switch", "on")), Pilot.NEVER);
    }

    private static Bench sagging(Tolerance computer) {
        return bench(computer)
                .part(breaker("breaker", 5))
                .join("bus", "bar", "breaker", "in")
                .join("breaker", "out", "stub", "bar");
    }

    private static double race() {
        return seconds(ProtectorCurves.FAST_BREAKER, faultAmps(BREAKER_OHMS), 5);
    }

    @Test
    void aLoadThatRidesThroughTheRaceNoticesNothing() throws UntoldStory {
        Story story =
                Telling.unaided(
                        sagging(new Tolerance(9, 10, 1.2 * race(), 0.1, 40, 1)),
                        "stub: short to ground");
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_STOPS));
        assertEquals(0, story.engine().longestInterruptionSeconds());
    }

    @Test
    void aLoadThatDoesNotResetsAndBootsAndTheEngineIsInterruptedFromResetToRunning()
            throws UntoldStory {
        double ride = 0.5 * race();
        Story story =
                Telling.unaided(
                        sagging(new Tolerance(9, 10, ride, 0.1, 40, 1)), "stub: short to ground");
        double opened = Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "breaker");
        assertEquals(race(), opened, 1e-3 * race());
        assertEquals(ride, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "computer"), 1e-9);
        assertEquals(
                opened + 0.1, Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "computer"), 1e-9);
        assertEquals(opened + 0.1 - ride, story.engine().longestInterruptionSeconds(), 1e-9);
        assertEquals(0, story.engine().stops());
    }

    @Test
    void aBootLongerThanTheEngineToleratesStopsItAndTheWindmillStartsItAgain() throws UntoldStory {
        double ride = 0.5 * race();
        Story story =
                Telling.unaided(
                        sagging(new Tolerance(9, 10, ride, 0.5, 40, 1)), "stub: short to ground");
        double opened = Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "breaker");
        assertEquals(ride + 0.3, Telling.when(story, StoryEvent.Kind.ENGINE_STOPS, "engine"), 1e-9);
        assertEquals(
                opened + 0.5 + 2,
                Telling.when(story, StoryEvent.Kind.ENGINE_RESTARTS, "engine"),
                1e-9);
        assertEquals(1, story.engine().stops());
        assertTrue(story.engine().runningAtEnd());
        assertInstanceOf(AtLeast.class, story.engine().endurance());
    }

    @Test
    void anElectronicTripOpensAShortBeforeTheComputerNotices() throws UntoldStory {
        Bench bench =
                bench(new Tolerance(9, 10, 1e-3, 0.1, 40, 1))
                        .part(Shelf.controller("controller", 1, 10, true))
                        .lever("controller.1", "on")
                        .join("controller", "supply", "bus", "bar")
                        .join("controller", "ground", "ground", "stud")
                        .join("controller", "out-1", "stub", "bar");
        Story story = Telling.unaided(bench, "stub: short to ground");
        assertTrue(Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "controller") < 1e-4);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.LOAD_STOPS));
    }
}
