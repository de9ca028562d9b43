package stillturning.story.timeline.stride;

import java.util.List;
import stillturning.network.NoOperatingPoint;
import stillturning.story.device.Stateful;

/**
 * Carries charges and heats forward by an embedded Runge–Kutta pair, or by the mean of the slopes
 * at both ends where that is as good. A trial leaves the network solved at the trial time.
 */
public final class Integrator {

    private static final double[] TO_END = {1};
    private static final double[] BOTH_ENDS = {0.5, 0.5};

    /** Solves the network for the present values. */
    public interface Network {
        void solve() throws NoOperatingPoint;
    }

    /** Follows along: reads the network at each stage, and is told what became of the step. */
    public interface Follower {
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

    private final RungeKuttaPair pair;
    private final double standstill;
    private final Network network;
    private final Follower[] followers;
    private final double[] weights;
    private final Stateful[] states;
    private final double[] start;
    private final double[] end;
    private final double[][] slopes;
    private double length;
    private int count;

    /** Number of the first state that stands still. */
    private int stand;

    /**
     * @param most largest number of states that it is ever asked to carry
     * @param standstill what changes no faster stands still (1/s)
     */
    public Integrator(
            RungeKuttaPair pair,
            int most,
            double standstill,
            Network network,
            Follower... followers) {
        this.standstill = standstill;
        this.pair = pair;
        this.weights = new double[pair.stages];
        this.network = network;
        this.followers = followers;
        this.states = new Stateful[most];
        this.start = new double[most];
        this.end = new double[most];
        this.slopes = new double[pair.stages][most];
    }

    /**
     * Makes the present values and slopes of these states the start of the next trials.
     *
     * @param standing what stands still, and goes on so until it would move faster than that
     */
    void begin(List<? extends Stateful> moving, List<? extends Stateful> standing) {
        count = 0;
        stand = Integer.MAX_VALUE;
        moving.forEach(this::carry);
        stand = count;
        standing.forEach(this::carry);
        tellRead(0);
    }

    private void carry(Stateful state) {
        states[count] = state;
        start[count] = state.value();
        slopes[0][count] = slope(count);
        count++;
    }

    private double slope(int state) {
        double slope = states[state].perSecond();
        return state < stand || Math.abs(slope) > standstill ? slope : 0;
    }

    /** Goes on while nothing moves (s). */
    public void rest(double seconds) {
        tellRead(0);
        tellTaken(seconds, TO_END);
    }

    /**
     * Goes straight on from the start, with the slopes there.
     *
     * @param seconds length of the step (s)
     * @return how far the way of any state bends off
     */
    double glance(double seconds) throws NoOperatingPoint {
        aside(seconds);
        double bend = 0;
        for (int i = 0; i < count; i++) {
            slopes[1][i] = slope(i);
            bend = Math.max(bend, Math.abs(slopes[1][i] - slopes[0][i]) * seconds / 2);
        }
        return bend;
    }

    /** Goes straight on to a point of the step glanced at last, which stays as it is (s). */
    void aside(double seconds) throws NoOperatingPoint {
        for (int i = 0; i < count; i++) {
            states[i].value(start[i] + seconds * slopes[0][i]);
        }
        network.solve();
    }

    /** Ends the step just glanced at by the mean of the slopes at its ends. */
    void straighten(double seconds) throws NoOperatingPoint {
        for (int i = 0; i < count; i++) {
            states[i].value(start[i] + seconds * (slopes[0][i] + slopes[1][i]) / 2);
        }
        network.solve();
        tellRead(1);
        tellTaken(seconds, BOTH_ENDS);
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
            double behind = across - length * slopes[pair.stages - 1][i];
            double bow = ahead + t * (behind - ahead + (1 - t) * length * sum(pair.between, i));
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
        for (int stage = 1; stage < pair.stages; stage++) {
            for (int i = 0; i < count; i++) {
                double slope = 0;
                for (int k = 0; k < stage; k++) {
                    slope += pair.takes(stage, k) * slopes[k][i];
                }
                end[i] = start[i] + seconds * slope;
                states[i].value(end[i]);
            }
            network.solve();
            for (int i = 0; i < count; i++) {
                slopes[stage][i] = slope(i);
            }
            tellRead(stage);
        }
        length = seconds;
        double worst = 0;
        for (int i = 0; i < count; i++) {
            worst = Math.max(worst, Math.abs(seconds * sum(pair.error, i)));
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
        for (int stage = 0; stage < pair.stages; stage++) {
            double across = stage < pair.stages - 1 ? pair.takes(pair.stages - 1, stage) : 0;
            double ahead = (stage == 0 ? 1 : 0) - across;
            double behind = across - (stage == pair.stages - 1 ? 1 : 0);
            double bow = ahead + t * (behind - ahead + (1 - t) * pair.between[stage]);
            weights[stage] = across + (1 - t) * bow;
        }
        tellTaken(seconds, weights);
    }

    private void tellRead(int stage) {
        for (Follower follower : followers) {
            follower.read(stage);
        }
    }

    private void tellTaken(double seconds, double[] by) {
        for (Follower follower : followers) {
            follower.taken(seconds, by);
        }
    }

    private double sum(double[] coefficients, int state) {
        double sum = 0;
        for (int stage = 0; stage < pair.stages; stage++) {
            sum += coefficients[stage] * slopes[stage][state];
        }
        return sum;
    }
}
