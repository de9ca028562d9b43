package stillturning.assess.ranges;

import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill a cube evenly. The first dimensions are a Sobol sequence whose binary digits are
 * shifted at random, which keeps every interval of a power of two equally filled. The others, whose
 * Sobol points would be in step with each other for thousands of samples, are Latin hypercube
 * columns: each of as many intervals as there are samples holds one, in random order.
 *
 * @see "I. M. Sobol, USSR Comp. Math. 7 (1967) 86-112; R. Cranley, T. Patterson, SIAM J. Numer.
 *     Anal. 13 (1976) 904-914 for random shifts; A. B. Owen, ACM TOMACS 8 (1998) 71-102 for Latin
 *     columns beside them; all from memory, unverified"
 */
public final class QuasiRandomPoints {

    /** Dimensions whose first few hundred Sobol points are well spread in pairs. */
    private static final int SOBOL = 24;

    private static final int BITS = 52;

    private QuasiRandomPoints() {}

    /**
     * The points, each coordinate above 0 and below 1.
     *
     * @param count of points, at best a power of two
     */
    public static double[][] points(int count, int dimensions, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] points = new double[count][dimensions];
        sobol(points, Math.min(SOBOL, dimensions), random);
        for (int d = SOBOL; d < dimensions; d++) {
            latin(points, d, random);
        }
        return points;
    }

    private static void sobol(double[][] points, int dimensions, SplittableRandom random) {
        if (dimensions == 0) {
            return;
        }
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        long[] shifts = new long[dimensions];
        for (int d = 0; d < dimensions; d++) {
            shifts[d] = random.nextLong(1L << BITS);
        }
        for (double[] point : points) {
            double[] unshifted = sequence.nextVector();
            for (int d = 0; d < dimensions; d++) {
                long digits = (long) Math.scalb(unshifted[d], BITS) ^ shifts[d];
                point[d] = Math.scalb(digits + 0.5, -BITS);
            }
        }
    }

    private static void latin(double[][] points, int d, SplittableRandom random) {
        for (int i = 0; i < points.length; i++) {
            int earlier = random.nextInt(i + 1);
            points[i][d] = points[earlier][d];
            points[earlier][d] = (i + random.nextDouble(1e-12, 1)) / points.length;
        }
    }
}
