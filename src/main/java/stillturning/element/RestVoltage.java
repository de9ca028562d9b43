package stillturning.element;

/**
 * Open-circuit voltage of a battery by its state of charge: straight lines between points.
 *
 * @see "lead-acid: Battery Council International table, 26.7 °C, read in a second source"
 * @see "LiFePO4: generic four-cell scale, read; scales differ by 20 % of charge on the plateau"
 */
@SuppressWarnings("ImmutableEnumChecker") // the arrays never leave and are never written
public enum RestVoltage {
    /**
     * Below 10 % the curve leaves the rest voltages for the end-of-discharge voltage of 1.75 V a
     * cell, since capacity is defined by that voltage under load.
     */
    LEAD_ACID(
            new double[] {0, 0.10, 0.25, 0.50, 0.75, 1},
            new double[] {10.50, 11.95, 12.06, 12.24, 12.45, 12.65}),
    LITHIUM_IRON_PHOSPHATE(
            new double[] {0, 0.10, 0.20, 0.30, 0.40, 0.70, 0.90, 1},
            new double[] {10.0, 12.0, 12.8, 13.0, 13.2, 13.3, 13.4, 13.6});

    private final double[] charge;
    private final double[] volts;

    RestVoltage(double[] charge, double[] volts) {
        this.charge = charge;
        this.volts = volts;
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
        double share = (fraction - charge[piece]) / (charge[piece + 1] - charge[piece]);
        return volts[piece] + share * (volts[piece + 1] - volts[piece]);
    }

    /** Open-circuit voltage (V) of a nominal 12 V battery at a state of charge from 0 to 1. */
    public double voltsAt(double fraction) {
        return voltsOn(pieceAt(fraction), Math.max(0, Math.min(1, fraction)));
    }
}
