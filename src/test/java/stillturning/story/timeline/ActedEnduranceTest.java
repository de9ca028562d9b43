package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.Load;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.source.Battery;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * Endurance after the loss of charging where somebody acts: pilots and automatics that shed, phases
 * that are flown. What they do at times of their own can only be too little; where the voltage
 * calls for it, or a protector opens, more load may last longer, and then the story shows why.
 */
class ActedEnduranceTest {

    private static final Set<String> ALL = Set.of("cruise", "descent", "approach");

    /** What makes a story with more load or less battery last longer. */
    private static final Set<StoryEvent.Kind> REASONS =
            EnumSet.of(
                    StoryEvent.Kind.PILOT,
                    StoryEvent.Kind.AUTOMATIC,
                    StoryEvent.Kind.PROTECTOR_OPENS,
                    StoryEvent.Kind.LOAD_STOPS);

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    /**
     * Shares of what is drawn by lot, and a load beside it.
     *
     * @param more amperes of one more load; 0 for none
     * @param grown multiple of the first shed load
     */
    private record Lot(double capacity, double health, double charge, double grown, double more) {
        static final Lot AS_DRAWN = new Lot(1, 1, 1, 1, 0);
    }

    /** By what somebody sees that something is to be done. */
    private enum Sees {
        ALTERNATOR,
        VOLTAGE
    }

    private static Story told(long seed, Lot lot, Sees sees, FlightSpan span) throws UntoldStory {
        SplittableRandom random = new SplittableRandom(seed);
        Bench bench = new Bench().bus("bus").part(Shelf.alternator("alternator", 14.2, 60, false));
        bench.join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar");
        boolean lead = random.nextBoolean();
        bench.part(
                        new Battery(
                                        Bench.tag("battery"),
                                        new OpenCircuit(
                                                lead
                                                        ? RestVoltage.LEAD_ACID
                                                        : RestVoltage.LITHIUM_IRON_PHOSPHATE,
                                                1),
                                        lead ? 6 : 4,
                                        new Capacity(
                                                3600 * drawn(random, 3, 12) * lot.capacity,
                                                20,
                                                drawn(random, 1, 1.3)),
                                        drawn(random, 0.005, 0.15),
                                        drawn(random, 0.7, 1) * lot.charge,
                                        Optional.empty())
                                .aged(lot.health))
                .join("battery", "minus", "ground", "stud")
                .join("battery", "plus", "bus", "bar");
        load(bench, "computer", drawn(random, 2, 8), ALL, 9);
        load(bench, "radio", drawn(random, 1, 4) * lot.grown, ALL, 3);
        load(bench, "lights", drawn(random, 1, 6), Set.of("cruise", "approach"), 1);
        load(bench, "heater", drawn(random, 1, 6), Set.of("cruise"), 2);
        if (lot.more > 0) {
            load(bench, "one-more", lot.more, ALL, 5);
        }
        Cue.Sign sign =
                sees == Sees.ALTERNATOR
                        ? new Cue.AlternatorOut("alternator")
                        : new Cue.LowVolts(new Terminal("bus", "bar"), 12.2, 5);
        boolean automatic = random.nextBoolean();
        bench.cue("charging", sign)
                .procedure(
                        new Procedure(
                                "shed",
                                List.of("charging"),
                                drawn(random, 10, 300),
                                Map.of(),
                                List.of("lights", "heater"),
                                new Procedure.Execution(
                                        automatic ? Optional.of("computer") : Optional.empty(),
                                        random.nextBoolean() ? 0 : drawn(random, 10, 300))))
                .engine(new EngineLogic.One("computer"), false)
                .phases(
                        new Phase("cruise", drawn(random, 300, 3000), 60),
                        new Phase("descent", drawn(random, 300, 3000), 40),
                        new Phase("approach", 36_000, 40));
        Moment moment = new Moment("cruise", span, Batteries.AS_STATED);
        return new Timeline(bench.study(), bench.candidate(), moment)
                .tell(bench.failure("alternator: no output"), Setting.with(Pilot.PLANNED));
    }

    private static double drawn(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static void load(Bench bench, String id, double amps, Set<String> phases, int rank) {
        Demand demand = new Demand(DemandKind.CONSTANT_CURRENT, amps, 12);
        bench.load(new Load(Bench.tag(id), demand, Bench.HARDY, List.of("plus")))
                .use(id, new LoadNeed.Use(phases, 1), rank)
                .join(id, "plus", "bus", "bar");
    }

    private static double seconds(Story story) {
        return story.engine().endurance().seconds();
    }

    private static final List<Lot> WORSE =
            List.of(
                    new Lot(0.999, 1, 1, 1, 0),
                    new Lot(0.5, 1, 1, 1, 0),
                    new Lot(1, 0.8, 1, 1, 0),
                    new Lot(1, 1, 0.7, 1, 0),
                    new Lot(1, 1, 1, 1.5, 0),
                    new Lot(1, 1, 1, 1, 0.01),
                    new Lot(1, 1, 1, 1, 4));

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsShedBecauseOfTheAlternatorNeverMakesWorseLastLonger(long seed) throws UntoldStory {
        for (FlightSpan span : FlightSpan.values()) {
            Story before = told(seed, Lot.AS_DRAWN, Sees.ALTERNATOR, span);
            for (Lot worse : WORSE) {
                Story story = told(seed, worse, Sees.ALTERNATOR, span);
                assertTrue(
                        seconds(story) <= seconds(before) * (1 + 1e-9),
                        "seed "
                                + seed
                                + ": "
                                + worse
                                + " lasts "
                                + seconds(story)
                                + " s, "
                                + seconds(before)
                                + " s before");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatLastsLongerWhereTheVoltageCallsForSheddingShowsTheEarlierShedding(long seed)
            throws UntoldStory {
        Story before = told(seed, Lot.AS_DRAWN, Sees.VOLTAGE, FlightSpan.HELD);
        for (Lot worse : WORSE) {
            Story story = told(seed, worse, Sees.VOLTAGE, FlightSpan.HELD);
            if (seconds(story) > seconds(before) * (1 + 1e-9)) {
                assertTrue(
                        shed(story) < shed(before),
                        "seed " + seed + ": " + worse + " " + story.happenings());
            }
        }
    }

    private static double shed(Story story) {
        return story.happenings().stream()
                .filter(h -> h.part().equals("shed"))
                .mapToDouble(StoryEvent::seconds)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void moreLoadLastsLongerWhereItsOwnSagCallsForShedding() throws UntoldStory {
        int longer = 0;
        for (long seed : seeds().toArray()) {
            Story before = told(seed, Lot.AS_DRAWN, Sees.VOLTAGE, FlightSpan.HELD);
            Story with = told(seed, new Lot(1, 1, 1, 1, 0.01), Sees.VOLTAGE, FlightSpan.HELD);
            longer += seconds(with) > seconds(before) ? 1 : 0;
        }
        assertTrue(longer > 0, "no seed is an example of what the other test allows");
    }

    /** Ten ampere-hours, a computer, and a heater behind a breaker or one that stops early. */
    private static Bench heated(double heaterAmps, double breakerAmps, double minimumVolts) {
        return new Bench()
                .part(Shelf.lead("battery", 10, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .closedSwitch("heat", "off")
                .breaker("breaker", breakerAmps)
                .load(
                        "heater",
                        DemandKind.CONSTANT_CURRENT,
                        heaterAmps,
                        new Tolerance(minimumVolts, minimumVolts, 0.1, 0.5, 40, 1))
                .join("bus", "bar", "heat", "in")
                .join("heat", "out", "breaker", "in")
                .join("breaker", "out", "heater", "plus")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Story heating(Bench bench) throws UntoldStory {
        return bench.timeline().tell(Failure.levers("heat", Map.of("heat", "on")), Pilot.NEVER);
    }

    @Test
    void aLoadThatGrowsBeyondItsBreakerLastsLongerAndTheStoryShowsTheTrip() throws UntoldStory {
        Story held = heating(heated(10, 10, 6));
        Story tripped = heating(heated(20, 10, 6));
        assertTrue(seconds(tripped) > seconds(held), seconds(held) + " " + seconds(tripped));
        assertEquals(0, Telling.count(held, StoryEvent.Kind.PROTECTOR_OPENS));
        double trip = Telling.when(tripped, StoryEvent.Kind.PROTECTOR_OPENS, "breaker");
        // 36,000 C: 25 A up to the trip, then 5 A, and the 0.32 s that the engine lasts without
        assertEquals(0.32 + trip + (36_000 - 25 * trip) / 5, seconds(tripped), 0.2);
    }

    @Test
    void aLoadThatStarvesEarlierLastsLongerAndTheStoryShowsItsStop() throws UntoldStory {
        Story works = heating(heated(10, 30, 6));
        Story stops = heating(heated(10, 30, 12));
        assertEquals(0, Telling.count(works, StoryEvent.Kind.LOAD_STOPS) - 2, works.toString());
        assertTrue(seconds(stops) > seconds(works), seconds(works) + " " + seconds(stops));
        assertTrue(
                stops.happenings().stream()
                        .filter(h -> h.seconds() < seconds(works) - 1)
                        .anyMatch(h -> REASONS.contains(h.kind()) && h.part().equals("heater")),
                stops.toString());
    }
}
