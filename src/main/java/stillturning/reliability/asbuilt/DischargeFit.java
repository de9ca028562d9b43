package stillturning.reliability.asbuilt;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import stillturning.parts.element.Cell;
import stillturning.reliability.asbuilt.DischargeLog.LogSample;
import stillturning.reliability.asbuilt.FittedBattery.Quality;
import stillturning.reliability.asbuilt.FittedValue.BatteryValue;
import stillturning.reliability.asbuilt.FittedValue.Known;
import stillturning.reliability.asbuilt.FittedValue.Unknown;

/** Capacity, resistance and first charge of a battery, by least squares over a discharge. */
public final class DischargeFit {

    private static final int LEAST_READINGS = 8;
    private static final int MOST_EVALUATIONS = 300;

    /** Where the search ends: far below what noise leaves open. */
    private static final double FINE = 1e-8;

    /** Half the interval of 95 %, as a logarithm of the value: wider tells nothing. A guess. */
    private static final double WIDEST = Math.log(1.5);

    /** The same of a state of charge. A guess. */
    private static final double WIDEST_CHARGE = 0.25;

    /** Two values that move together more than this cannot be told apart. A guess. */
    private static final double TOGETHER = 0.9;

    /** A direction that moves the voltages so much less than another moves nothing. */
    private static final double NOTHING = 1e-12;

    /**
     * Current into the battery, as a share of the largest out of it, that is an offset. A guess.
     */
    private static final double OFFSET = 0.02;

    /** Where the search begins: factors of the stated capacity and resistance. */
    private static final double[][] STARTS = {{1, 1}, {0.5, 1.5}, {1.5, 0.7}};

    private final Cell cell;
    private final double celsius;
    private final DischargeLog log;
    private final OptionalDouble known;
    private final DischargeModel model;
    private final int free;

    private DischargeFit(Cell cell, double celsius, DischargeLog log, OptionalDouble known) {
        this.cell = cell;
        this.celsius = celsius;
        this.log = log;
        this.known = known;
        this.model = new DischargeModel(cell, celsius, log);
        this.free = known.isPresent() ? 2 : 3;
    }

    /**
     * Fits a log.
     *
     * @param cell of the battery, as stated
     * @param celsius its temperature (°C)
     * @param charge state of charge at the first reading, 0 to 1, if it is known
     * @throws UntellingLog if nothing can be concluded from it
     */
    public static FittedBattery of(
            Cell cell, double celsius, DischargeLog log, OptionalDouble charge)
            throws UntellingLog {
        refuse(log);
        return new DischargeFit(cell, celsius, log.condensed(), charge).fitted();
    }

    private static void refuse(DischargeLog log) throws UntellingLog {
        if (log.samples().size() < LEAST_READINGS) {
            throw new UntellingLog(
                    log.samples().size()
                            + (log.samples().size() == 1 ? " reading is" : " readings are")
                            + " too few; take at least "
                            + LEAST_READINGS
                            + ", some of them with another current");
        }
        if (!(log.coulombs() > 0)) {
            throw new UntellingLog(
                    "no charge leaves the battery; count its current above 0 while it gives");
        }
        if (log.leastAmps() < -OFFSET * log.mostAmps()) {
            throw new UntellingLog(
                    String.format(
                            Locale.ROOT,
                            "the battery takes in %.2f A meanwhile; leave out what comes before and"
                                    + " after the discharge",
                            -log.leastAmps()));
        }
    }

    private FittedBattery fitted() throws UntellingLog {
        double[] best = best();
        double[] left = left(best);
        double rms = Math.sqrt(sumOfSquares(left) / left.length);
        double widened = widened(left);
        RealMatrix unit = covariance(best);
        RealMatrix spread =
                unit.scalarMultiply(sumOfSquares(left) / degrees() * widened * widened)
                        .add(bySwitching(best, unit));
        double nominal = cell.openCircuit().factor();
        return new FittedBattery(
                factor(cell.capacity().coulombs(), best, spread, BatteryValue.CAPACITY),
                factor(cell.ohms(), best, spread, BatteryValue.RESISTANCE),
                charge(best, spread),
                new Quality(
                        left.length,
                        rms,
                        widened,
                        celsius,
                        rms <= FittedBattery.MOST_MISFIT_VOLTS * nominal,
                        correlation(spread, DischargeModel.CAPACITY, DischargeModel.RESISTANCE)));
    }

    private int degrees() {
        return log.samples().size() - free;
    }

    private double[] best() throws UntellingLog {
        Optional<Optimum> best = Optional.empty();
        for (double[] factors : STARTS) {
            Optional<Optimum> found = from(factors);
            if (found.isPresent()
                    && (best.isEmpty() || found.get().getCost() < best.get().getCost())) {
                best = found;
            }
        }
        return best.map(optimum -> whole(optimum.getPoint().toArray()))
                .orElseThrow(
                        () ->
                                new UntellingLog(
                                        "no capacity and no resistance bring the battery of the"
                                                + " study near this log; is it of this battery?"));
    }

    private Optional<Optimum> from(double[] factors) {
        double[] start = new double[free];
        start[DischargeModel.CAPACITY] = Math.log(factors[0]);
        start[DischargeModel.RESISTANCE] = Math.log(factors[1]);
        if (free > DischargeModel.CHARGE) {
            start[DischargeModel.CHARGE] = cell.chargeAtStart();
        }
        MultivariateJacobianFunction function =
                point -> {
                    double[] all = whole(point.toArray());
                    return new Pair<>(
                            new ArrayRealVector(model.volts(all), false),
                            new Array2DRowRealMatrix(model.slopes(all, free), false));
                };
        try {
            return Optional.of(
                    new LevenbergMarquardtOptimizer()
                            .withCostRelativeTolerance(FINE)
                            .withParameterRelativeTolerance(FINE)
                            .optimize(
                                    new LeastSquaresBuilder()
                                            .start(start)
                                            .model(function)
                                            .target(measured())
                                            .maxEvaluations(MOST_EVALUATIONS)
                                            .maxIterations(MOST_EVALUATIONS)
                                            .build()));
        } catch (MathIllegalStateException | IllegalArgumentException lost) {
            // this start leads nowhere: beyond what can be counted, or round in circles
            return Optional.empty();
        }
    }

    private double[] whole(double[] point) {
        return known.isPresent()
                ? new double[] {point[0], point[1], known.getAsDouble()}
                : point.clone();
    }

    private double[] measured() {
        return log.samples().stream().mapToDouble(LogSample::volts).toArray();
    }

    private double[] left(double[] at) {
        double[] left = measured();
        double[] volts = model.volts(at);
        for (int i = 0; i < left.length; i++) {
            left[i] -= volts[i];
        }
        return left;
    }

    private static double sumOfSquares(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }

    /**
     * What an error grows by where neighbours are off together: the root of (1 + r) / (1 - r) with
     * r their correlation, as of a series in which each carries a share r on; 1 where r is no more
     * than chance makes it. From memory, unverified; the test of autocorrelated logs holds it.
     */
    private static double widened(double[] left) {
        double together = 0;
        for (int i = 1; i < left.length; i++) {
            together += left[i] * left[i - 1];
        }
        double all = sumOfSquares(left);
        double correlation = all > 0 ? Math.min(0.98, together / all) : 0;
        boolean chance = correlation < 2 / Math.sqrt(left.length);
        return chance ? 1 : Math.sqrt((1 + correlation) / (1 - correlation));
    }

    /** Covariance for a variance of 1; huge in directions that move no voltage. */
    private RealMatrix covariance(double[] at) {
        RealMatrix slopes = new Array2DRowRealMatrix(model.slopes(at, free), false);
        EigenDecomposition normal = new EigenDecomposition(slopes.transpose().multiply(slopes));
        double[] strengths = normal.getRealEigenvalues();
        double least = Math.max(Double.MIN_NORMAL, NOTHING * largest(strengths));
        RealMatrix sum = new Array2DRowRealMatrix(free, free);
        for (int i = 0; i < free; i++) {
            sum =
                    sum.add(
                            normal.getEigenvector(i)
                                    .outerProduct(normal.getEigenvector(i))
                                    .scalarMultiply(1 / Math.max(least, strengths[i])));
        }
        return sum;
    }

    /** What comes of not knowing when between two readings the current changed. */
    private RealMatrix bySwitching(double[] at, RealMatrix unit) {
        double[][] slopes = model.slopes(at, DischargeModel.CHARGE + 1);
        double[] unsure = model.unsure(at);
        RealVector later = new ArrayRealVector(free);
        RealMatrix sum = new Array2DRowRealMatrix(free, free);
        for (int i = unsure.length - 1; i > 0; i--) {
            for (int column = 0; column < free; column++) {
                later.addToEntry(column, slopes[i][column] * slopes[i][DischargeModel.CHARGE]);
            }
            RealVector shift = unit.operate(later).mapMultiply(unsure[i]);
            sum = sum.add(shift.outerProduct(shift));
        }
        return sum;
    }

    private static double largest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }

    private double quantile() {
        return new TDistribution(degrees()).inverseCumulativeProbability(0.975);
    }

    private FittedValue factor(double stated, double[] best, RealMatrix spread, BatteryValue of) {
        int at = column(of);
        double error = Math.sqrt(spread.getEntry(at, at));
        double half = quantile() * error;
        double value = stated * Math.exp(best[at]);
        return half <= WIDEST && Double.isFinite(value)
                ? new Known(value, value * error, value * Math.exp(-half), value * Math.exp(half))
                : unknown(spread, of);
    }

    private FittedValue charge(double[] best, RealMatrix spread) {
        double value = best[DischargeModel.CHARGE];
        if (known.isPresent()) {
            return new Known(value, 0, value, value);
        }
        double error = Math.sqrt(spread.getEntry(DischargeModel.CHARGE, DischargeModel.CHARGE));
        double half = quantile() * error;
        return half <= WIDEST_CHARGE
                ? new Known(value, error, value - half, value + half)
                : unknown(spread, BatteryValue.CHARGE);
    }

    private static int column(BatteryValue of) {
        return switch (of) {
            case CAPACITY -> DischargeModel.CAPACITY;
            case RESISTANCE -> DischargeModel.RESISTANCE;
            case CHARGE -> DischargeModel.CHARGE;
        };
    }

    private static double correlation(RealMatrix spread, int one, int other) {
        return spread.getEntry(one, other)
                / Math.sqrt(spread.getEntry(one, one) * spread.getEntry(other, other));
    }

    private Unknown unknown(RealMatrix spread, BatteryValue of) {
        int at = column(of);
        Optional<BatteryValue> other = Optional.empty();
        double most = TOGETHER;
        for (BatteryValue one : BatteryValue.values()) {
            int beside = column(one);
            if (beside != at && beside < free) {
                double together = Math.abs(correlation(spread, at, beside));
                if (together > most) {
                    most = together;
                    other = Optional.of(one);
                }
            }
        }
        return new Unknown(other);
    }
}
