package stillturning.assess.ranges;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points that fill a cube evenly. */
class QuasiRandomPointsTest {

    private static final int COUNT = 256;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 77})
    void eachOfAsManyIntervalsHoldsOnePoint(long seed) {
        double[][] points = QuasiRandomPoints.points(COUNT, 60, seed);
        for (int d = 0; d < 60; d++) {
            int[] held = new int[COUNT];
            for (double[] point : points) {
                held[(int) (point[d] * COUNT)]++;
            }
            for (int n = 0; n < COUNT; n++) {
                assertEquals(1, held[n], "seed " + seed + ", dimension " + d + ", interval " + n);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theMeanOfAProductIsFarNearerThanChanceWouldBringIt(long seed) {
        double mean = 0;
        for (double[] point : QuasiRandomPoints.points(COUNT, 5, seed)) {
            double product = 1;
            for (double x : point) {
                product *= 2 * x;
            }
            mean += product / COUNT;
        }
        // computed here: the mean is 1; by chance it would be off by sqrt((4/3)^5 - 1) / 16 = 0.11
        assertEquals(1, mean, 0.05, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void aSeedGivesTheSamePointsAgain(long seed) {
        double[][] once = QuasiRandomPoints.points(16, 40, seed);
        double[][] again = QuasiRandomPoints.points(16, 40, seed);
        for (int n = 0; n < 16; n++) {
            assertArrayEquals(once[n], again[n]);
        }
    }
}
