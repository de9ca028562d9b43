package stillturning.assess.ranges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.ranges.Contributions.InputShare;

/** Shares of inputs in outcomes whose answer is known. */
class ContributionsTest {

    private static final int COUNT = 256;
    private static final int INPUTS = 150;

    private static List<InputShare> parts(double[][] points, double[] outcome) {
        return new Contributions(points, outcome).parts();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aSumHangsOnItsTermsByTheirVariances(long seed) {
        double[][] points = QuasiRandomPoints.points(COUNT, INPUTS, seed);
        double[] sum = new double[COUNT];
        for (int n = 0; n < COUNT; n++) {
            sum[n] = 2 * points[n][3] - points[n][7] + points[n][140] / 2;
        }
        List<InputShare> parts = parts(points, sum);
        // computed here: variances as 4 : 1 : 1/4, the third in a Latin column; ranks shift a share
        // by a few hundredths
        assertEquals(
                List.of(3, 7, 140), parts.stream().map(InputShare::input).toList(), "seed " + seed);
        assertEquals(16 / 21.0, parts.get(0).share(), 0.05, "seed " + seed);
        assertEquals(4 / 21.0, parts.get(1).share(), 0.05, "seed " + seed);
        assertEquals(1 / 21.0, parts.get(2).share(), 0.02, "seed " + seed);
        assertTrue(parts.get(0).rises() && !parts.get(1).rises() && parts.get(2).rises());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothingStandsOutFromChance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] outcome = new double[COUNT];
        for (int n = 0; n < COUNT; n++) {
            outcome[n] = random.nextDouble();
        }
        assertEquals(
                List.of(),
                parts(QuasiRandomPoints.points(COUNT, INPUTS, seed), outcome),
                "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anEndlessOutcomeHasARank(long seed) {
        double[][] points = QuasiRandomPoints.points(COUNT, 20, seed);
        double[] outcome = new double[COUNT];
        for (int n = 0; n < COUNT; n++) {
            outcome[n] = points[n][4] > 0.7 ? Double.POSITIVE_INFINITY : points[n][4];
        }
        List<InputShare> parts = parts(points, outcome);
        assertEquals(4, parts.get(0).input());
        assertTrue(parts.get(0).share() > 0.9, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, Double.POSITIVE_INFINITY})
    void whatNeverChangesHangsOnNothing(double always) {
        double[] outcome = new double[COUNT];
        java.util.Arrays.fill(outcome, always);
        assertEquals(List.of(), parts(QuasiRandomPoints.points(COUNT, 9, 1), outcome));
    }
}
