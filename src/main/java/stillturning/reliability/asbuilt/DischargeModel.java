package stillturning.reliability.asbuilt;

import java.util.List;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.reliability.asbuilt.DischargeLog.LogSample;

/**
 * What a battery's voltage would have been through a log, for a capacity, resistance and charge.
 */
final class DischargeModel {

    /** What is free: logarithms of factors of capacity and resistance, and the first charge. */
    static final int CAPACITY = 0;

    static final int RESISTANCE = 1;
    static final int CHARGE = 2;

    private static final double STEP = 1e-5;

    private final Cell cell;
    private final double celsius;
    private final Capacity stated;
    private final List<LogSample> samples;

    DischargeModel(Cell cell, double celsius, DischargeLog log) {
        this.cell = cell;
        this.celsius = celsius;
        this.stated = cell.capacityAt(celsius);
        this.samples = log.samples();
    }

    /** Voltages (V), one a reading. */
    double[] volts(double[] free) {
        Capacity capacity = stated.times(Math.exp(free[CAPACITY]));
        double factor = Math.exp(free[RESISTANCE]);
        double charge = free[CHARGE];
        double[] volts = new double[samples.size()];
        double rate = used(capacity, samples.get(0).amps());
        for (int i = 0; i < volts.length; i++) {
            LogSample sample = samples.get(i);
            if (i > 0) {
                double next = used(capacity, sample.amps());
                charge -= (rate + next) / 2 * (sample.seconds() - samples.get(i - 1).seconds());
                rate = next;
            }
            volts[i] = volts(charge, sample.amps() * factor);
        }
        return volts;
    }

    /**
     * How far off the charge may be that leaves between each reading and the one before it, since
     * nobody knows when between them the current changed: standard deviation, for a change at any
     * instant alike.
     */
    double[] unsure(double[] free) {
        Capacity capacity = stated.times(Math.exp(free[CAPACITY]));
        double[] unsure = new double[samples.size()];
        for (int i = 1; i < unsure.length; i++) {
            LogSample before = samples.get(i - 1);
            LogSample now = samples.get(i);
            double jump = Math.abs(used(capacity, now.amps()) - used(capacity, before.amps()));
            unsure[i] = jump * (now.seconds() - before.seconds()) / Math.sqrt(12);
        }
        return unsure;
    }

    /** What a small current into it brings counts as what it takes out. */
    private static double used(Capacity capacity, double amps) {
        return amps >= 0 ? capacity.usedPerSecond(amps) : amps / capacity.coulombs();
    }

    /** Beyond full and empty the curve goes on straight. */
    private double volts(double charge, double amps) {
        RestVoltage curve = cell.openCircuit().curve();
        int piece = curve.pieceAt(Math.max(0, Math.min(1, charge)));
        return cell.openCircuit().voltsOn(piece, charge, celsius)
                - amps * cell.ohmsOn(piece, charge, celsius);
    }

    /** How voltages answer to what is free: a row a reading, a column for each of the first. */
    double[][] slopes(double[] free, int columns) {
        double[][] slopes = new double[samples.size()][columns];
        for (int column = 0; column < columns; column++) {
            double[] more = free.clone();
            double[] less = free.clone();
            more[column] += STEP;
            less[column] -= STEP;
            double[] above = volts(more);
            double[] below = volts(less);
            for (int row = 0; row < slopes.length; row++) {
                slopes[row][column] = (above[row] - below[row]) / (2 * STEP);
            }
        }
        return slopes;
    }
}
