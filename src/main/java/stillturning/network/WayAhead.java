package stillturning.network;

import java.util.Arrays;

/**
 * Where a network whose laws drift will be: foretold by the curve through the last points that were
 * found on its way. Only a place to start looking.
 */
final class WayAhead {

    /** Points that the curve goes through. */
    private static final int MOST = 3;

    /** Points nearer to each other than this part of the way say nothing of a curve. */
    private static final double NEAR = 1e-3;

    /** Solutions of one network differ by less than this. */
    private static final double SAME_VOLTS = 1e-7;

    private final double[][] volts;
    private final double[] place = new double[MOST];
    private final double[] weight = new double[MOST];
    private final boolean[] counts = new boolean[MOST];
    private int known;
    private double setOut;
    private double latest;

    WayAhead(int nets) {
        volts = new double[MOST][nets];
    }

    /**
     * A way begins here.
     *
     * @param goesOn whether it goes on from the last, where the last point was
     */
    void begin(double[] here, boolean goesOn) {
        // of two points that a network has, the way stays with the one where it begins
        if (goesOn && isLatest(here)) {
            setOut = latest;
        } else {
            known = 0;
            setOut = 0;
            remember(here, 0);
        }
    }

    private boolean isLatest(double[] here) {
        double apart = known > 0 ? 0.0 : Double.POSITIVE_INFINITY;
        for (int k = 0; k < here.length; k++) {
            apart = Math.max(apart, Math.abs(here[k] - volts[0][k]));
        }
        return apart <= SAME_VOLTS;
    }

    /** A point was found so far from where the way began. */
    void found(double[] here, double along) {
        remember(here, setOut + along);
    }

    private void remember(double[] here, double at) {
        latest = at;
        int last = Math.min(known, MOST - 1);
        double[] oldest = volts[last];
        for (int i = last; i > 0; i--) {
            volts[i] = volts[i - 1];
            place[i] = place[i - 1];
        }
        System.arraycopy(here, 0, oldest, 0, here.length);
        volts[0] = oldest;
        place[0] = at;
        known = Math.min(known + 1, MOST);
    }

    /**
     * Foretells a point (in the form of Lagrange).
     *
     * @param first step from which voltages are wanted
     * @param along how far from where the way began
     */
    void foretell(double[] there, int first, double along) {
        if (!weigh(setOut + along)) {
            return;
        }
        Arrays.fill(there, first, there.length, 0.0);
        for (int i = 0; i < known; i++) {
            double[] of = volts[i];
            double share = weight[i];
            if (share != 0.0) {
                for (int k = first; k < there.length; k++) {
                    there[k] += share * of[k];
                }
            }
        }
    }

    /** What each point counts at a place; whether they say anything. */
    private boolean weigh(double at) {
        double apart = 0.0;
        for (int i = 0; i < known; i++) {
            apart = Math.max(apart, Math.abs(at - place[i]));
        }
        int counted = 0;
        for (int i = 0; i < known; i++) {
            counts[i] = isNew(i, NEAR * apart);
            counted += counts[i] ? 1 : 0;
        }
        for (int i = 0; i < known; i++) {
            weight[i] = counts[i] ? share(i, at) : 0.0;
        }
        return counted > 1;
    }

    private double share(int point, double at) {
        double share = 1.0;
        for (int i = 0; i < known; i++) {
            if (i != point && counts[i]) {
                share *= (at - place[i]) / (place[point] - place[i]);
            }
        }
        return share;
    }

    private boolean isNew(int point, double near) {
        for (int i = 0; i < point; i++) {
            if (Math.abs(place[i] - place[point]) <= near) {
                return false;
            }
        }
        return true;
    }
}
