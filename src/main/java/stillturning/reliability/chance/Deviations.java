package stillturning.reliability.chance;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.apache.commons.math3.special.Erf;

/**
 * Standard normal deviations of every source with a spread, by Latin hypercube: the spread of each
 * is cut into as many equally likely pieces as there are samples, and each piece is used once.
 *
 * @see "M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239-245 (from memory,
 *     unverified)"
 */
final class Deviations {
    private static final double[] NONE = {};

    private final TreeMap<Integer, double[]> bySource = new TreeMap<>();

    Deviations(Exposure exposure, int samples, long seed) {
        for (int event = 0; event < exposure.occurrences().size(); event++) {
            if (exposure.occurrences().get(event).spread().errorFactor() > 1) {
                bySource.put(exposure.sources().get(event), new double[samples]);
            }
        }
        SplittableRandom random = new SplittableRandom(seed);
        bySource.values().forEach(column -> fill(column, random));
    }

    private static void fill(double[] column, SplittableRandom random) {
        for (int i = 0; i < column.length; i++) {
            int earlier = random.nextInt(i + 1);
            column[i] = column[earlier];
            double place = (i + random.nextDouble(1e-12, 1)) / column.length;
            column[earlier] = Math.sqrt(2) * Erf.erfInv(2 * place - 1);
        }
    }

    /** By sample, for every source with a spread. */
    SortedMap<Integer, double[]> bySource() {
        return Collections.unmodifiableSortedMap(bySource);
    }

    /** Of a source in a sample; 0 for one without spread. */
    double at(int source, int sample) {
        double[] column = bySource.getOrDefault(source, NONE);
        return column.length == 0 ? 0 : column[sample];
    }
}
