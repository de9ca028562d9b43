package stillturning.reliability.chance;

import java.util.Arrays;
import java.util.List;

/**
 * A reduced ordered binary decision diagram: nodes from the bottom up, each asking whether any of
 * some twin events happened. Node 0 says no, node 1 says yes; the last one is where the questions
 * start.
 */
final class DecisionDiagram implements Top {
    /** The diagram of no cut set: asked nothing, it says no. */
    static final DecisionDiagram NEVER =
            new DecisionDiagram(new int[0][], new int[1], new int[1], new int[1]);

    private final int[][] twins;
    private final int[] asked;
    private final int[] highs;
    private final int[] lows;

    /**
     * @param twins events by class
     * @param asked class by node; the first two entries of these arrays stand for the answers
     */
    DecisionDiagram(int[][] twins, int[] asked, int[] highs, int[] lows) {
        this.twins = twins;
        this.asked = asked;
        this.highs = highs;
        this.lows = lows;
    }

    /** Number of questions. */
    int nodes() {
        return Math.max(0, asked.length - 2);
    }

    @Override
    public int scratch(int flights) {
        return asked.length * flights;
    }

    @Override
    public double[] at(List<double[]> chances, double[] scratch) {
        int flights = chances.size();
        double[] any = InterchangeableEvents.any(twins, chances);
        Arrays.fill(scratch, 0, flights, 0);
        for (int node = 1; node < asked.length; node++) {
            int here = node * flights;
            if (node == 1) {
                Arrays.fill(scratch, here, here + flights, 1);
                continue;
            }
            int high = highs[node] * flights;
            int low = lows[node] * flights;
            int chance = asked[node] * flights;
            for (int flight = 0; flight < flights; flight++) {
                double below = scratch[low + flight];
                scratch[here + flight] =
                        below + any[chance + flight] * (scratch[high + flight] - below);
            }
        }
        int root = (asked.length - 1) * flights;
        return Arrays.copyOfRange(scratch, root, root + flights);
    }
}
