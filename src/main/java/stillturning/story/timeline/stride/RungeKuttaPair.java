package stillturning.story.timeline.stride;

/**
 * An embedded pair of Runge–Kutta formulas whose last stage is the end of the step: how far to go,
 * by how much that may be wrong, and the way between its ends.
 */
public final class RungeKuttaPair {

    /**
     * Order 5(4), with the way between of order 4.
     *
     * @see "J. R. Dormand, P. J. Prince, J. Comp. Appl. Math. 6 (1980) 19-26, the way between the
     *     ends of a step by L. F. Shampine, Math. Comp. 46 (1986) 135-150; coefficients from
     *     memory, held by a test of their order"
     */
    static final RungeKuttaPair DORMAND_PRINCE =
            new RungeKuttaPair(
                    4,
                    new double[][] {
                        {},
                        {1.0 / 5},
                        {3.0 / 40, 9.0 / 40},
                        {44.0 / 45, -56.0 / 15, 32.0 / 9},
                        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
                        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
                        {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
                    },
                    new double[] {
                        71.0 / 57600,
                        0,
                        -71.0 / 16695,
                        71.0 / 1920,
                        -17253.0 / 339200,
                        22.0 / 525,
                        -1.0 / 40
                    },
                    new double[] {
                        -12715105075.0 / 11282082432.0,
                        0,
                        87487479700.0 / 32700410799.0,
                        -10690763975.0 / 1880347072.0,
                        701980252875.0 / 199316789632.0,
                        -1453857185.0 / 822651844.0,
                        69997945.0 / 29380423.0
                    });

    /**
     * Order 3(2), with the cubic through both ends and slopes between them.
     *
     * @see "P. Bogacki, L. F. Shampine, Appl. Math. Lett. 2 (1989) 321-325; coefficients from
     *     memory, held by a test of their order"
     */
    static final RungeKuttaPair BOGACKI_SHAMPINE =
            new RungeKuttaPair(
                    2,
                    new double[][] {
                        {}, {1.0 / 2}, {0, 3.0 / 4}, {2.0 / 9, 1.0 / 3, 4.0 / 9},
                    },
                    new double[] {-5.0 / 72, 1.0 / 12, 1.0 / 9, -1.0 / 8},
                    new double[4]);

    /** Largest number of stages of a pair, the start included. */
    public static final int MOST_STAGES = 7;

    private final double[][] ways;
    private final double[] nodes;

    /** What the error estimate takes of each slope. */
    final double[] error;

    /** What the way between the ends adds to the cubic through both ends and slopes. */
    final double[] between;

    /** By this power the step grows with what the error may be. */
    final double growth;

    /** How many stages there are, the start included. */
    final int stages;

    /** Readings on the way: what is foretold of the end gives way to the end itself. */
    final int places;

    private RungeKuttaPair(int order, double[][] ways, double[] error, double[] between) {
        this.ways = ways;
        this.error = error;
        this.between = between;
        growth = 1.0 / (order + 1);
        stages = ways.length;
        nodes = new double[stages];
        int ends = 0;
        for (int stage = 0; stage < stages; stage++) {
            for (double part : ways[stage]) {
                nodes[stage] += part;
            }
            ends += nodes[stage] > 1 - 1e-9 ? 1 : 0;
        }
        places = stages - ends + 1;
    }

    /** What a stage takes of the slope of one before it. */
    double takes(int stage, int of) {
        return ways[stage][of];
    }

    /** Which reading on the way a stage is. */
    int place(int stage) {
        return Math.min(stage, places - 1);
    }

    /** Where on the way a reading is taken, 0 to 1. */
    double at(int place) {
        return nodes[place];
    }
}
