package stillturning.assess.ranges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import stillturning.assess.ranges.StudyVariant.VariedStudy;
import stillturning.assess.verdict.Outcome;
import stillturning.bench.Bench;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand;
import stillturning.story.UntoldStory;

/** One battery of 20 Ah give or take a fifth, one load of 10 A give or take a tenth. */
class SamplingTest {

    private static final List<RangedInput> INPUTS =
            List.of(
                    new RangedInput("one.yaml", "capacity", "20 Ah"),
                    new RangedInput("study.yaml", "draws", "10 A"),
                    new RangedInput("study.yaml", "title", "does nothing"));

    private static VariedStudy made(double[] at) {
        Bench bench =
                new Bench()
                        .battery("battery", 20 * (0.8 + 0.4 * at[0]), 0.01, 1)
                        .bus("bus")
                        .load(
                                "ecu",
                                Demand.DemandKind.CONSTANT_CURRENT,
                                10 * (0.9 + 0.2 * at[1]),
                                Bench.HARDY)
                        .join("battery", "plus", "bus", "bar")
                        .join("bus", "bar", "ecu", "plus")
                        .engine(new EngineLogic.One("ecu"), false)
                        .enough(0); // nobody can see this battery run down
        return new VariedStudy(Optional.of(bench.study()), Arrays.stream(at).boxed().toList(), "");
    }

    private static EnduranceRange range() throws UntoldStory {
        return new Sampling(
                        INPUTS,
                        SamplingTest::made,
                        candidate -> Optional.of(Failure.levers("nothing", Map.of())))
                .of("nothing", 256, 1, done -> {});
    }

    /**
     * Computed here: the ratio of two uniform variables. With c from 16 to 24 Ah and i from 9 to 11
     * A, P(c / i <= t) = (t E[i] - 16) / 8 = (10 t - 16) / 8 while 16 <= t i <= 24 for all i, so
     * the median is 2 h; the tails are cut by both limits and were integrated numerically.
     */
    @Test
    void theQuantilesAreThoseOfTheRatioOfTheTwo() throws UntoldStory {
        EnduranceRange range = range();
        assertEquals(7200, range.quantiles().median().seconds(), 0.01 * 7200);
        assertEquals(quantile(0.05), range.quantiles().low().seconds(), 0.01 * 7200);
        assertEquals(quantile(0.95), range.quantiles().high().seconds(), 0.01 * 7200);
        assertEquals(1, range.shareOf(Outcome.REDUNDANCY_LOST));
    }

    private static double quantile(double share) {
        int steps = 400;
        double[] seconds = new double[steps * steps];
        for (int c = 0; c < steps; c++) {
            for (int i = 0; i < steps; i++) {
                seconds[steps * c + i] =
                        3600 * (16 + 8 * (c + 0.5) / steps) / (9 + 2 * (i + 0.5) / steps);
            }
        }
        Arrays.sort(seconds);
        return seconds[(int) (share * seconds.length)];
    }

    @Test
    void itHangsOnCapacityFourTimesAsMuchAsOnCurrent() throws UntoldStory {
        EnduranceRange range = range();
        // relative variances as 0.2^2 : 0.1^2
        assertEquals(2, range.contributors().size());
        assertEquals("capacity", range.contributors().get(0).input().name());
        assertEquals(0.8, range.contributors().get(0).share(), 0.05);
        assertEquals(0.2, range.contributors().get(1).share(), 0.05);
        assertTrue(range.contributors().get(0).lengthens());
        assertTrue(!range.contributors().get(1).lengthens());
    }

    @Test
    void theSameComesOutAgain() throws UntoldStory {
        assertEquals(range(), range());
    }

    @Test
    void theSameComesOutWithOneThreadAndWithFour() throws Exception {
        List<EnduranceRange> found = new ArrayList<>();
        for (int threads : new int[] {1, 4}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                found.add(pool.submit(SamplingTest::range).get());
            } finally {
                pool.shutdown();
            }
        }
        assertEquals(found.get(0), found.get(1));
    }

    @Test
    void samplesThatCannotBeMadeAreCountedAndNoneAtAllIsRefused() throws UntoldStory {
        Sampling half =
                new Sampling(
                        INPUTS,
                        at ->
                                at[2] < 0.5
                                        ? made(at)
                                        : new VariedStudy(Optional.empty(), List.of(), "too much"),
                        candidate -> Optional.of(Failure.levers("nothing", Map.of())));
        EnduranceRange range = half.of("nothing", 64, 1, done -> {});
        assertEquals(32, range.told());
        assertEquals(32, range.untold().size());
        Sampling none =
                new Sampling(
                        INPUTS,
                        at -> new VariedStudy(Optional.empty(), List.of(), "too much"),
                        candidate -> Optional.empty());
        assertThrows(UntoldStory.class, () -> none.of("nothing", 4, 1, done -> {}));
    }
}
