package stillturning.assess.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/**
 * The definition: L. S. Shapley, A value for n-person games, 1953 (from memory, unverified). The
 * numbers are computed from it by hand.
 */
class ShapleyTest {

    private static final double EXACT = 1e-12;

    @Test
    void twoPlayersShareWhatTheyGainTogetherInHalves() {
        assertArrayEquals(new double[] {4, 6}, Shapley.shares(new double[] {0, 3, 5, 10}), EXACT);
    }

    @Test
    void whatNeedsAllIsSharedEvenly() {
        assertArrayEquals(
                new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0},
                Shapley.shares(new double[] {0, 0, 0, 0, 0, 0, 0, 1}),
                EXACT);
    }

    @Test
    void threeUnlikePlayers() {
        // in the order none, A, B, AB, C, AC, BC, ABC
        assertArrayEquals(
                new double[] {13 / 6.0, 2 / 3.0, 7 / 6.0},
                Shapley.shares(new double[] {0, 1, 0, 1, 0, 2, 0, 4}),
                EXACT);
    }

    @RepeatedTest(50)
    void sharesSumToTheWholeAndAreTheMeanOverAllOrders(RepetitionInfo info) {
        SplittableRandom random = new SplittableRandom(info.getCurrentRepetition());
        int players = 1 + random.nextInt(5);
        double[] worth = random.doubles(1 << players, -1, 1).toArray();
        double[] shares = Shapley.shares(worth);
        assertEquals(worth[worth.length - 1] - worth[0], Arrays.stream(shares).sum(), EXACT);
        double[] mean = new double[players];
        double orders = overAllOrders(worth, 0, players, mean);
        for (int i = 0; i < players; i++) {
            assertEquals(mean[i] / orders, shares[i], EXACT);
        }
    }

    /** Walks every order one by one, and adds what each player adds in it; counts the orders. */
    private static double overAllOrders(double[] worth, int in, int players, double[] sums) {
        if (in == (1 << players) - 1) {
            return 1;
        }
        double orders = 0;
        for (int i = 0; i < players; i++) {
            if ((in & 1 << i) == 0) {
                double onward = overAllOrders(worth, in | 1 << i, players, sums);
                sums[i] += onward * (worth[in | 1 << i] - worth[in]);
                orders += onward;
            }
        }
        return orders;
    }

    @Test
    void aNumberOfSetsThatIsNoPowerOfTwoIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Shapley.shares(new double[3]));
    }
}
