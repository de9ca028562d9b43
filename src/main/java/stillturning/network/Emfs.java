package stillturning.network;

import java.util.Arrays;
import stillturning.network.law.BranchLaw;

/** The voltages that sources have by themselves, and the highest of each island. */
final class Emfs {

    private final double[] volts;
    private final double[] highest;

    /**
     * @param nets number of nets, the reference included
     */
    Emfs(BranchLaw[] laws, int nets) {
        volts = Arrays.stream(laws).mapToDouble(BranchLaw::emfVolts).toArray();
        highest = new double[nets];
    }

    void set(int branch, BranchLaw law) {
        volts[branch] = law.emfVolts();
    }

    /** Finds the highest of each island. */
    void find(Islands islands, int[] from) {
        Arrays.fill(highest, 0.0);
        for (int b = 0; b < volts.length; b++) {
            if (volts[b] > 0.0) {
                int island = islands.islandOf(from[b]);
                highest[island] = Math.max(highest[island], volts[b]);
            }
        }
    }

    /** The highest that was found in an island (V). */
    double highestIn(int island) {
        return highest[island];
    }

    /** All together (V). */
    double sum() {
        double sum = 0.0;
        for (double own : volts) {
            sum += own;
        }
        return sum;
    }
}
