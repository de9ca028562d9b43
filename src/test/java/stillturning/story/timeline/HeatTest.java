package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Study;
import stillturning.model.Zone;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.element.curve.Tripping;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Race;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Protectors that start cold, warm, in a warm place, and at either edge of their band. */
class HeatTest {

    private static final double RATING = 5;
    private static final Failure ON = Failure.levers("heater on", Map.of("switch", "on"));

    /** A heater behind a protector, switched on beside another that has run for long. */
    private static Bench bench(Part protector, double before, double more) {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 40, 0.05, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 90, false))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .bus("hub")
                        .join("battery", "plus", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 0.01, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true)
                        .part(protector)
                        .join("bus", "bar", protector.id(), "in")
                        .join(protector.id(), "out", "hub", "bar")
                        .closedSwitch("switch", "off")
                        .join("hub", "bar", "switch", "in")
                        .load("heater", DemandKind.CONSTANT_CURRENT, more, Bench.HARDY)
                        .join("switch", "out", "heater", "plus");
        return before == 0
                ? bench
                : bench.load("lights", DemandKind.CONSTANT_CURRENT, before, Bench.HARDY)
                        .join("lights", "plus", "hub", "bar");
    }

    private static Part breaker(TimeCurrentCurve curve) {
        return new Breaker(Bench.tag("protector"), RATING, 0.001, curve);
    }

    private static Setting at(Tripping edge) {
        return Setting.with(Pilot.NEVER).with(new Race(edge, Optional.empty()));
    }

    private static double opens(Bench bench, Tripping edge) throws UntoldStory {
        return Telling.when(
                bench.timeline().tell(ON, at(edge)), StoryEvent.Kind.PROTECTOR_OPENS, "protector");
    }

    /**
     * Published points: ISO 8820-3 type C and E class sheets, read in a second source; federal item
     * record NSN 5925-00-226-0377, read (its 138 % row: the time from memory, unverified, so left
     * out); electronic trip: times guessed.
     */
    static Stream<Arguments> publishedPoints() {
        return Stream.of(
                        Arguments.of(ProtectorCurves.BLADE_FUSE, 1.35),
                        Arguments.of(ProtectorCurves.HIGH_CURRENT_FUSE, 1.35),
                        Arguments.of(ProtectorCurves.FAST_BREAKER, 2),
                        Arguments.of(ProtectorCurves.ELECTRONIC_TRIP, 2))
                .flatMap(
                        from -> {
                            TimeCurrentCurve curve = (TimeCurrentCurve) from.get()[0];
                            double first = ((Number) from.get()[1]).doubleValue();
                            return curve.points().stream()
                                    .filter(p -> p.multiple() >= first)
                                    .map(p -> Arguments.of(curve, p));
                        });
    }

    @ParameterizedTest
    @MethodSource("publishedPoints")
    void aColdProtectorOpensAtThePublishedEdgesOfItsBand(
            TimeCurrentCurve curve, TimeCurrentCurve.CurvePoint point) throws UntoldStory {
        Bench bench = bench(breaker(curve), 0, RATING * point.multiple());
        assertEquals(
                point.fastSeconds(),
                opens(bench, Tripping.FAST),
                1e-6 * point.fastSeconds() + 2e-9);
        assertEquals(
                point.slowSeconds(),
                opens(bench, Tripping.SLOW),
                1e-6 * point.slowSeconds() + 2e-9);
    }

    /** Beyond the last point current squared times time stays: 10 x to 15 x rating. */
    @Test
    void beyondTheLastPointItTakesTheSameEnergy() throws UntoldStory {
        Bench bench = bench(breaker(ProtectorCurves.FAST_BREAKER), 0, 15 * RATING);
        assertEquals(0.02 * 100 / 225, opens(bench, Tripping.FAST), 1e-8);
    }

    /**
     * First-order thermal model, computed here: warm from a load L0 it takes ln((L2 - L02)/(L2 -
     * 1)) / ln(L2/(L2 - 1)) of the cold time, loads as multiples of what is carried continuously.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 2", "0.6, 2", "1.0, 2", "1.09, 2", "0.6, 1.2", "0.6, 6", "0.6, 12"})
    void theCurrentBeforeShortensTheTime(double before, double after) throws UntoldStory {
        TimeCurrentCurve curve = ProtectorCurves.BLADE_FUSE;
        Bench bench = bench(breaker(curve), before * RATING, (after - before) * RATING);
        double square = Math.pow(after / curve.holdMultiple(), 2);
        double preload = Math.pow(before / curve.holdMultiple(), 2);
        double share =
                Math.log((square - preload) / (square - 1)) / Math.log(square / (square - 1));
        double expected = share * curve.secondsToOpen(after, Tripping.TYPICAL);
        assertTrue(share < 1);
        assertEquals(expected, opens(bench, Tripping.TYPICAL), 1e-6 * expected);
    }

    /** Counting up starts above the threshold: class convention, read. */
    @Test
    void anElectronicTripKeepsNothingOfTheCurrentBefore() throws UntoldStory {
        TimeCurrentCurve curve = ProtectorCurves.ELECTRONIC_TRIP;
        Bench bench = bench(breaker(curve), RATING, RATING);
        double cold = curve.secondsToOpen(2, Tripping.TYPICAL);
        assertEquals(cold, opens(bench, Tripping.TYPICAL), 1e-6 * cold);
    }

    /** 40 A type E at 85 °C counts as 30 A: class sheet, read in a second source. */
    @Test
    void inAWarmPlaceAFuseCountsForLess() throws UntoldStory {
        Part fuse = Shelf.fuse("protector", 40, ProtectorCurves.HIGH_CURRENT_FUSE);
        Bench bench = bench(fuse, 0, 60);
        Zone warm = new Zone("bench", "bench", Zone.FirewallSide.HOT, Set.of(), 85);
        Study study = bench.study();
        Study hot =
                new Study(
                        study.id(),
                        study.heading(),
                        new Study.Aircraft(
                                12,
                                study.aircraft().loads(),
                                study.aircraft().engine(),
                                study.aircraft().phases(),
                                List.of(warm)),
                        study.goals(),
                        study.candidates());
        Story story = new Timeline(hot, bench.candidate()).tell(ON, at(Tripping.SLOW));
        // twice 30 A: 50 s at the slow edge, same sheet
        assertEquals(50, Telling.when(story, StoryEvent.Kind.PROTECTOR_OPENS, "protector"), 1e-4);
        assertTrue(opens(bench, Tripping.SLOW) > 100, "1.5 times its rating where it is cool");
    }

    /** No longest time is published under 135 %: read in a second source. */
    @Test
    void aHundredAndTwentyPercentMayNeverClearABladeFuse() throws UntoldStory {
        Bench bench = bench(breaker(ProtectorCurves.BLADE_FUSE), 0, 1.2 * RATING);
        Story slow = bench.timeline().tell(ON, at(Tripping.SLOW));
        assertEquals(0, Telling.count(slow, StoryEvent.Kind.PROTECTOR_OPENS));
        Story typical = bench.timeline().tell(ON, at(Tripping.TYPICAL));
        StoryEvent opening = typical.of(StoryEvent.Kind.PROTECTOR_OPENS).get(0);
        assertTrue(opening.words().contains("may carry continuously"), opening.words());
        assertEquals(Double.POSITIVE_INFINITY, typical.contests().get(0).slowSeconds());
    }

    /** A heater that stops calls the pilot, who resets the breaker; it has kept some heat. */
    private static Bench resetting(double seconds) {
        return bench(breaker(ProtectorCurves.FAST_BREAKER), 0, 2 * RATING)
                .load("lamp", DemandKind.CONSTANT_CURRENT, 1e-6, new Tolerance(6, 6.5, 0, 0, 40, 1))
                .join("lamp", "plus", "hub", "bar")
                .cue("lamp dark", new Cue.LoadStops("lamp"))
                .procedure("reset", "lamp dark", seconds, Map.of("protector", "in"));
    }

    /** Time constant of a breaker 60 s; first-order thermal model, computed here. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 60, 1000})
    void aBreakerThatIsResetIntoTheOverloadTripsAgainTheSoonerTheWarmerItIs(double seconds)
            throws UntoldStory {
        Story story = resetting(seconds).timeline().tell(ON, Pilot.PLANNED);
        List<StoryEvent> opened = story.of(StoryEvent.Kind.PROTECTOR_OPENS);
        double reset = Telling.when(story, StoryEvent.Kind.PILOT, "reset");
        TimeCurrentCurve curve = ProtectorCurves.FAST_BREAKER;
        double cold = curve.secondsToOpen(2, Tripping.TYPICAL);
        double square = Math.pow(2 / curve.holdMultiple(), 2);
        double kept = Math.exp(-seconds / 60);
        double again =
                cold * Math.log((square - kept) / (square - 1)) / Math.log(square / (square - 1));
        assertEquals(2, opened.size());
        assertEquals(cold, opened.get(0).seconds(), 1e-5 * cold);
        assertEquals(cold + seconds, reset, 1e-5 * cold);
        assertEquals(again, opened.get(1).seconds() - reset, 1e-4 * again);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 0.37})
    void theStepDoesNotMatterToWhatCools(double longestStepSeconds) throws UntoldStory {
        Bench bench = resetting(60);
        Story free = bench.timeline().tell(ON, Pilot.PLANNED);
        Story held =
                new Timeline(
                                bench.study(),
                                bench.candidate(),
                                Moment.heldIn("cruise"),
                                longestStepSeconds)
                        .tell(ON, Setting.with(Pilot.PLANNED), 600);
        List<StoryEvent> one = free.of(StoryEvent.Kind.PROTECTOR_OPENS);
        List<StoryEvent> other = held.of(StoryEvent.Kind.PROTECTOR_OPENS);
        assertEquals(2, other.size());
        for (int i = 0; i < 2; i++) {
            assertEquals(one.get(i).seconds(), other.get(i).seconds(), 1e-7);
        }
    }

    /**
     * A small battery runs down beside a big one, whose current creeps up to what the breaker
     * carries continuously and then rises by half. Values for which steps once got too short.
     */
    @Test
    void whatBeginsToWarmAtItsThresholdIsFollowedInFewStepsHoweverTheCurrentRises() {
        Bench bench =
                beside(beside(new Bench(), "big", 60), "small", 2.5937424600999996)
                        .breaker("breaker", 10)
                        .join("big-bus", "bar", "breaker", "in")
                        .join("breaker", "out", "small-bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 23, Bench.HARDY)
                        .join("computer", "plus", "small-bus", "bar")
                        .engine(new EngineLogic.One("computer"), true);
        Failure nothing = Failure.levers("nothing", Map.of());
        Story story =
                assertTimeoutPreemptively(
                        Duration.ofSeconds(30), () -> bench.timeline().tell(nothing, Pilot.NEVER));
        assertEquals(1, Telling.count(story, StoryEvent.Kind.PROTECTOR_OPENS));
        assertTrue(Telling.trace(story, "big-bus").points().size() < 500);
    }

    private static Bench beside(Bench bench, String id, double ampHours) {
        return bench.part(Shelf.lead(id, ampHours, 0.02, 1))
                .join(id, "minus", "ground", "stud")
                .bus(id + "-bus")
                .join(id, "plus", id + "-bus", "bar");
    }
}
