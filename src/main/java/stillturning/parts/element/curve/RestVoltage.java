package stillturning.parts.element.curve;

/**
 * Open-circuit voltage and resistance of a battery by its state of charge: straight lines between
 * points, the same points for both. With it goes what else its chemistry decides.
 *
 * @see "voltage of lead-acid: Battery Council International table, 26.7 °C, read in a second
 *     source"
 * @see "voltage of LiFePO4: generic four-cell scale, read; scales differ by 20 % of charge on the
 *     plateau"
 * @see "resistance: guesses after shapes from memory, unverified"
 */
@SuppressWarnings("ImmutableEnumChecker") // the arrays never leave and are never written
public enum RestVoltage {
    /**
     * Below 10 % the curve leaves the rest voltages for the end-of-discharge voltage of 1.75 V a
     * cell, since capacity is defined by that voltage under load. The resistance doubles on the
     * way, because the acid grows thin.
     */
    LEAD_ACID(
            new double[] {0, 0.10, 0.25, 0.50, 0.75, 1},
            new double[] {10.50, 11.95, 12.06, 12.24, 12.45, 12.65},
            new double[] {2.0, 1.7, 1.4, 1.15, 1.05, 1},
            ByTemperature.LEAD_ACID,
            Acceptance.LEAD_ACID),
    LITHIUM_IRON_PHOSPHATE(
            new double[] {0, 0.10, 0.20, 0.30, 0.40, 0.70, 0.90, 1},
            new double[] {10.0, 12.0, 12.8, 13.0, 13.2, 13.3, 13.4, 13.6},
            new double[] {1.6, 1.3, 1.15, 1.05, 1, 1, 1, 1},
            ByTemperature.LITHIUM_IRON_PHOSPHATE,
            Acceptance.LITHIUM_IRON_PHOSPHATE);

    private final double[] charge;
    private final double[] volts;
    private final double[] resistance;
    private final ByTemperature byTemperature;
    private final Acceptance acceptance;

    RestVoltage(
            double[] charge,
            double[] volts,
            double[] resistance,
            ByTemperature byTemperature,
            Acceptance acceptance) {
        this.charge = charge;
        this.volts = volts;
        this.resistance = resistance;
        this.byTemperature = byTemperature;
        this.acceptance = acceptance;
    }

    /** What cold and warmth do to it. */
    public ByTemperature byTemperature() {
        return byTemperature;
    }

    /** What it takes in. */
    public Acceptance acceptance() {
        return acceptance;
    }

    /** Number of straight pieces. */
    public int pieces() {
        return charge.length - 1;
    }

    /** State of charge at which a piece starts. */
    public double pieceStart(int piece) {
        return charge[piece];
    }

    /** State of charge at which a piece ends. */
    public double pieceEnd(int piece) {
        return charge[piece + 1];
    }

    /** The piece of a state of charge from 0 to 1; at a joint the lower one. */
    public int pieceAt(double fraction) {
        int piece = 0;
        while (piece < pieces() - 1 && pieceEnd(piece) < fraction) {
            piece++;
        }
        return piece;
    }

    /**
     * Voltage on a piece, carried on straight beyond its ends.
     *
     * @param fraction state of charge
     * @return open-circuit voltage of a nominal 12 V battery (V)
     */
    public double voltsOn(int piece, double fraction) {
        return along(volts, piece, fraction);
    }

    /** Open-circuit voltage (V) of a nominal 12 V battery at a state of charge from 0 to 1. */
    public double voltsAt(double fraction) {
        return voltsOn(pieceAt(fraction), Math.max(0, Math.min(1, fraction)));
    }

    /** Resistance on a piece as a multiple of the full battery's, carried on straight. */
    public double resistanceOn(int piece, double fraction) {
        return along(resistance, piece, fraction);
    }

    private double along(double[] values, int piece, double fraction) {
        double share = (fraction - charge[piece]) / (charge[piece + 1] - charge[piece]);
        return values[piece] + share * (values[piece + 1] - values[piece]);
    }
}
