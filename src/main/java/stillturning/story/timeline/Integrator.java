package stillturning.story.timeline;

import java.util.List;
import stillturning.network.NoOperatingPoint;
import stillturning.story.device.Stateful;

/**
 * Carries charges and heats forward by the embedded Runge–Kutta pair of Dormand and Prince, order
 * 5(4), or along its tangent where that is as good. A trial leaves the network solved at the trial
 * time.
 *
 * @see "J. R. Dormand, P. J. Prince, J. Comp. Appl. Math. 6 (1980) 19-26, the way between the ends
 *     of a step by L. F. Shampine, Math. Comp. 46 (1986) 135-150; coefficients from memory, held by
 *     a test of their order"
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

    /** What the way between the ends of a step adds to the cubic through both ends and slopes. */
    private static final double[] BETWEEN = {
        -12715105075.0 / 11282082432.0,
        0,
        87487479700.0 / 32700410799.0,
        -10690763975.0 / 1880347072.0,
        701980252875.0 / 199316789632.0,
        -1453857185.0 / 822651844.0,
        69997945.0 / 29380423.0
    };

    static final int STAGES = 7;

    private static final double[] TO_END = {1};
    private static final double[] BOTH_ENDS = {0.5, 0.5};

    /** Solves the network for the present values. */
    interface Network {
        void solve() throws NoOperatingPoint;
    }

    /** Follows along: reads the network at each stage, and is told what became of the step. */
    interface Follower {
        /** The network is solved at this stage of the trial; stage 0 is the start. */
        void read(int stage);

        /**
         * The step is taken, and the network solved at its end.
         *
         * @param seconds length of the step (s)
         * @param weights what the readings of the stages count in a mean over the step
         */
        void taken(double seconds, double[] weights);
    }

    private final Network network;
    private final Follower follower;
    private final double[] weights = new double[STAGES];
    private final Stateful[] states;
    private final double[] start;
    private final double[] end;
    private final double[][] slopes;
    private double length;
    private int count;

    /**
     * @param most largest number of states that it is ever asked to carry
     */
    Integrator(int most, Network network, Follower follower) {
        this.network = network;
        this.follower = follower;
        this.states = new Stateful[most];
        this.start = new double[most];
        this.end = new double[most];
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
        follower.read(0);
    }

    /** Goes on while nothing moves (s). */
    void rest(double seconds) {
        follower.read(0);
        follower.taken(seconds, TO_END);
    }

    /**
     * Goes straight on from the start, with the slopes there.
     *
     * @param seconds length of the step (s)
     * @return how far the way of any state bends off
     */
    double glance(double seconds) throws NoOperatingPoint {
        for (int i = 0; i < count; i++) {
            states[i].value(start[i] + seconds * slopes[0][i]);
        }
        network.solve();
        double bend = 0;
        for (int i = 0; i < count; i++) {
            slopes[1][i] = states[i].perSecond();
            bend = Math.max(bend, Math.abs(slopes[1][i] - slopes[0][i]) * seconds / 2);
        }
        return bend;
    }

    /** Ends the step just glanced at by the mean of the slopes at its ends. */
    void straighten(double seconds) throws NoOperatingPoint {
        for (int i = 0; i < count; i++) {
            states[i].value(start[i] + seconds * (slopes[0][i] + slopes[1][i]) / 2);
        }
        network.solve();
        follower.read(1);
        follower.taken(seconds, BOTH_ENDS);
    }

    /**
     * Goes to a point of the step tried last.
     *
     * @param seconds from its start, not beyond its end (s)
     */
    void look(double seconds) throws NoOperatingPoint {
        double t = seconds / length;
        for (int i = 0; i < count; i++) {
            double across = end[i] - start[i];
            double ahead = length * slopes[0][i] - across;
            double behind = across - length * slopes[STAGES - 1][i];
            double bow = ahead + t * (behind - ahead + (1 - t) * length * sum(BETWEEN, i));
            states[i].value(start[i] + t * (across + (1 - t) * bow));
        }
        network.solve();
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
                end[i] = start[i] + seconds * slope;
                states[i].value(end[i]);
            }
            network.solve();
            for (int i = 0; i < count; i++) {
                slopes[stage][i] = states[i].perSecond();
            }
            follower.read(stage);
        }
        length = seconds;
        double worst = 0;
        for (int i = 0; i < count; i++) {
            worst = Math.max(worst, Math.abs(seconds * sum(ERROR, i)));
        }
        return worst;
    }

    /**
     * Takes the step tried last up to a point of it, where the last look was.
     *
     * @param seconds from its start, not beyond its end (s)
     */
    void take(double seconds) {
        double t = seconds / length;
        for (int stage = 0; stage < STAGES; stage++) {
            double across = stage < STAGES - 1 ? A[STAGES - 1][stage] : 0;
            double ahead = (stage == 0 ? 1 : 0) - across;
            double behind = across - (stage == STAGES - 1 ? 1 : 0);
            double bow = ahead + t * (behind - ahead + (1 - t) * BETWEEN[stage]);
            weights[stage] = across + (1 - t) * bow;
        }
        follower.taken(seconds, weights);
    }

    private double sum(double[] coefficients, int state) {
        double sum = 0;
        for (int stage = 0; stage < STAGES; stage++) {
            sum += coefficients[stage] * slopes[stage][state];
        }
        return sum;
    }
}
