package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** What the engine can spare depends on what is still alive. */
class BestSheddingTest {

    private static EngineLogic any(String... loads) {
        List<EngineLogic> terms = new ArrayList<>();
        for (String load : loads) {
            terms.add(new EngineLogic.One(load));
        }
        return EngineLogic.anyOf(terms);
    }

    /** A battery of 10 Ah, two pumps of 5 A of which either will do, a breaker for each. */
    private static Bench bench() {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 10, 0.02, 1))
                        .join("battery", "minus", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar");
        for (String pump : List.of("pump-1", "pump-2")) {
            bench.breaker(pump + "-breaker", 10)
                    .load(pump, DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                    .join("bus", "bar", pump + "-breaker", "in")
                    .join(pump + "-breaker", "out", pump, "plus");
        }
        return bench.load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(
                        EngineLogic.allOf(
                                List.of(new EngineLogic.One("computer"), any("pump-1", "pump-2"))),
                        false)
                .cue("dead", new Cue.LoadStops("pump-1"))
                .procedure("spare", "dead", 60, Map.of("pump-2-breaker", "pulled"));
    }

    private static SheddingEndurances lasting(Bench bench, String failure) throws UntoldStory {
        return new OtherConditions(bench.study(), Timeline.quick(bench.study(), bench.candidate()))
                .lasting(bench.failure(failure));
    }

    /** 36,000 C at 10 A; with both pumps on 15 A. */
    @Test
    void ofTwoPumpsTheOneThatWorksStaysOn() throws UntoldStory {
        for (String dead : List.of("pump-1", "pump-2")) {
            SheddingEndurances lasting = lasting(bench(), dead + ": stops working");
            assertEquals(3600, lasting.best().endurance().seconds(), 5, dead);
            assertTrue(lasting.best().endurance().seconds() >= lasting.asWritten().seconds(), dead);
        }
        SheddingEndurances written = lasting(bench(), "pump-1: stops working");
        assertTrue(written.asWritten().seconds() < 120, "the procedure pulls the one alive");
    }

    @Test
    void withNothingDeadOnePumpIsSparedAndNamed() throws UntoldStory {
        Bench bench = bench();
        Failure nothing = Failure.levers("nothing", Map.of());
        SheddingEndurances lasting =
                new OtherConditions(bench.study(), Timeline.quick(bench.study(), bench.candidate()))
                        .lasting(nothing);
        assertEquals(3600, lasting.best().endurance().seconds(), 5);
        assertEquals(1, lasting.best().spared().size());
    }

    @Test
    void everyLeastSetIsFoundOnce() throws UntoldStory {
        Bench bench = bench();
        EngineLogic two =
                new EngineLogic.AtLeast(
                        2, List.of(any("a", "b"), any("c", "d"), new EngineLogic.One("e")));
        bench.engine(two, false);
        List<Set<String>> found =
                new BestShedding(bench.study(), bench.timeline())
                        .justEnough(new TreeSet<>(two.loads()));
        assertEquals(
                Set.of(
                        Set.of("a", "c"),
                        Set.of("a", "d"),
                        Set.of("b", "c"),
                        Set.of("b", "d"),
                        Set.of("a", "e"),
                        Set.of("b", "e"),
                        Set.of("c", "e"),
                        Set.of("d", "e")),
                Set.copyOf(found));
        assertEquals(8, found.size());
    }

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    /** Random aircraft: two buses, pumps and computers on either, procedures that pull anything. */
    @ParameterizedTest
    @MethodSource("seeds")
    void itIsNeverWorseThanTheProcedures(long seed) throws UntoldStory {
        SplittableRandom random = new SplittableRandom(seed);
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery-a", 2 + 8 * random.nextDouble(), 0.02, 1))
                        .part(Shelf.lead("battery-b", 2 + 8 * random.nextDouble(), 0.02, 1))
                        .bus("bus-a")
                        .bus("bus-b")
                        .join("battery-a", "minus", "ground", "stud")
                        .join("battery-b", "minus", "ground", "stud")
                        .join("battery-a", "plus", "bus-a", "bar")
                        .join("battery-b", "plus", "bus-b", "bar");
        List<String> loads = List.of("computer-a", "computer-b", "pump-1", "pump-2", "lamp");
        for (String load : loads) {
            bench.breaker(load + "-breaker", 20)
                    .load(
                            load,
                            DemandKind.CONSTANT_CURRENT,
                            1 + 6 * random.nextDouble(),
                            Bench.HARDY)
                    .join(random.nextBoolean() ? "bus-a" : "bus-b", "bar", load + "-breaker", "in")
                    .join(load + "-breaker", "out", load, "plus");
        }
        bench.engine(
                        EngineLogic.allOf(
                                List.of(any("computer-a", "computer-b"), any("pump-1", "pump-2"))),
                        false)
                .cue("low", new Cue.LowVolts(new Terminal("bus-a", "bar"), 12.4, 1))
                .procedure(
                        "spare",
                        "low",
                        60 * random.nextDouble(),
                        Map.of(loads.get(random.nextInt(4)) + "-breaker", "pulled"),
                        "lamp");
        List<Failure> singles = FailureCatalogue.singlesOf(bench.candidate());
        int better = 0;
        OtherConditions conditions =
                new OtherConditions(
                        bench.study(), Timeline.quick(bench.study(), bench.candidate()));
        for (int n = 0; n < 6; n++) {
            Failure failure = singles.get(random.nextInt(singles.size()));
            SheddingEndurances lasting = conditions.lasting(failure);
            better += lasting.best().endurance().seconds() > lasting.asWritten().seconds() ? 1 : 0;
            assertTrue(
                    lasting.best().endurance().seconds() >= lasting.asWritten().seconds(),
                    failure.name());
        }
        assertTrue(better > 0, "shedding at once is worth something in one of six");
    }
}
