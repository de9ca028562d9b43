package stillturning.timeline;

import java.util.List;
import stillturning.network.NoOperatingPoint;

/**
 * Carries charges and heats forward by the embedded Runge–Kutta pair of Dormand and Prince, order
 * 5(4). A trial leaves the network solved at the trial time.
 *
 * @see "J. R. Dormand, P. J. Prince, J. Comp. Appl. Math. 6 (1980) 19-26; coefficients from memory,
 *     held by a test of their order"
 */
final class Integrator {

    private static final double[][] A = {
        {},
        {1.0 / 5},
        {3.0 / 40, 9.0 / 40},
        {44.0 / 45, -56.0 / 15, 32.0 / 9},
        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
        {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
    };

    private static final double[] ERROR = {
        71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
    };

    private static final int STAGES = 7;

    /** Solves the network for the present values. */
    interface Network {
        void solve() throws NoOperatingPoint;
    }

    private final Network network;
    private final Stateful[] states;
    private final double[] start;
    private final double[][] slopes;
    private int count;

    /**
     * @param most largest number of states that it is ever asked to carry
     */
    Integrator(int most, Network network) {
        this.network = network;
        this.states = new Stateful[most];
        this.start = new double[most];
        this.slopes = new double[STAGES][most];
    }

    /** Makes the present values and slopes of these states the start of the next trials. */
    void begin(List<Stateful> moving) {
        count = moving.size();
        for (int i = 0; i < count; i++) {
            states[i] = moving.get(i);
            start[i] = states[i].value();
            slopes[0][i] = states[i].perSecond();
        }
    }

    /**
     * Tries a step from the start.
     *
     * @param seconds length of the step (s)
     * @return estimate of the largest error of any state
     */
    double attempt(double seconds) throws NoOperatingPoint {
        for (int stage = 1; stage < STAGES; stage++) {
            for (int i = 0; i < count; i++) {
                double slope = 0;
                for (int k = 0; k < stage; k++) {
                    slope += A[stage][k] * slopes[k][i];
                }
                states[i].value(start[i] + seconds * slope);
            }
            network.solve();
            for (int i = 0; i < count; i++) {
                slopes[stage][i] = states[i].perSecond();
            }
        }
        return error(seconds);
    }

    private double error(double seconds) {
        double worst = 0;
        for (int i = 0; i < count; i++) {
            double error = 0;
            for (int k = 0; k < STAGES; k++) {
                error += ERROR[k] * slopes[k][i];
            }
            worst = Math.max(worst, Math.abs(error * seconds));
        }
        return worst;
    }
}
