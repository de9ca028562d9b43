package stillturning.network;

/**
 * The very last resort, where converters hang between two feeds or feed each other and no Newton
 * step leads on: pseudo-transient continuation. Each net is given a capacitor to the reference, and
 * the network settles from its start as it would after being switched on, by implicit Euler steps
 * that grow while they succeed. A step of length t ties each net to where it was by C/t; once the
 * ties are gone, the equations stand as they were, so nothing of the detour is left in the answer.
 * Allocates; slow.
 *
 * <p>A network of laws that are continuous, and of sources that are bounded, always has a point
 * (far out, what resists takes up more than sources give: Brouwer), so a refusal only says that it
 * was not found.
 *
 * @see "C. T. Kelley, D. E. Keyes: Convergence analysis of pseudo-transient continuation, SIAM
 *     Journal on Numerical Analysis 35 (1998) 508–523 (the method; from memory)"
 */
final class PseudoTransient {
    /** Beyond this the dense steps cost minutes. */
    private static final int MOST_NETS = 400;

    private static final int MOST_STEPS = 400;
    private static final double FIRST_SIEMENS = 100.0;
    private static final double FIRMEST_SIEMENS = 1e6;
    private static final double LOOSEST_SIEMENS = 1e-6;

    /** After a step that arrives the next is this much longer, after one that does not, shorter. */
    private static final double LONGER = 4.0;

    private static final double SHORTER = 8.0;

    /** A step that leaves more than this has not arrived (A). */
    private static final double ARRIVED_AMPS = 1e-7;

    /** What the answer is to be held to, with room for the sum at the reference (A). */
    private static final double AIMED_AMPS = 1e-9;

    private final NodalEquations equations;
    private final double[] excess;

    private PseudoTransient(NodalEquations equations, int nets) {
        this.equations = equations;
        excess = new double[nets];
    }

    /** Where the network settles from these voltages; the best found if it does not. */
    static double[] from(double[] start, NodalEquations equations) {
        return start.length > MOST_NETS
                ? start
                : new PseudoTransient(equations, start.length).settled(start);
    }

    private double[] settled(double[] start) {
        double[] at = start;
        double tie = FIRST_SIEMENS;
        for (int n = 0; n < MOST_STEPS && tie <= FIRMEST_SIEMENS; n++) {
            double[] next = DenseNewton.tied(at, equations, tie);
            if (!holds(next, at, tie, ARRIVED_AMPS)) {
                tie *= SHORTER;
                continue;
            }
            at = next;
            tie /= LONGER;
            if (tie < LOOSEST_SIEMENS) {
                double[] free = DenseNewton.from(at, equations);
                if (holds(free, free, 0.0, AIMED_AMPS)) {
                    return free;
                }
                tie = FIRST_SIEMENS;
            }
        }
        return DenseNewton.from(at, equations);
    }

    /** Whether the currents at every net, its tie included, add up this well; no NaN does. */
    private boolean holds(double[] volts, double[] anchor, double tieSiemens, double amps) {
        equations.evaluate(volts, excess);
        for (int k = 0; k < volts.length - 1; k++) {
            if (!(Math.abs(excess[k] - tieSiemens * (volts[k] - anchor[k])) <= amps)) {
                return false;
            }
        }
        return true;
    }
}
