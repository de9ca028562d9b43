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

    /**
     * @param fraction state of charge, 0 to 1; held at the ends outside
     * @return open-circuit voltage of a nominal 12 V battery (V)
     */
    public double voltsAt(double fraction) {
        if (fraction <= 0) {
            return volts[0];
        }
        int i = 1;
        while (i < charge.length - 1 && charge[i] < fraction) {
            i++;
        }
        double share = Math.min(1, (fraction - charge[i - 1]) / (charge[i] - charge[i - 1]));
        return volts[i - 1] + share * (volts[i] - volts[i - 1]);
    }
}
