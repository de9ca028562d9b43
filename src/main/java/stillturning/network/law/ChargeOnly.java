package stillturning.network.law;

/**
 * An empty battery, its plus terminal at {@code from}: takes charge above its voltage, gives
 * nothing below it but {@link #LEAK_SIEMENS} times the difference.
 *
 * @param volts voltage above which it charges (V), at least 0
 * @param ohms internal resistance (ohm), at least 1e-9
 */
public record ChargeOnly(double volts, double ohms) implements BranchLaw {
    /** Slope below the battery's voltage (S): 13 nA from 13 V to nothing. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public ChargeOnly {
        BranchChecks.notNegative("volts", volts);
        BranchChecks.ohms(ohms);
    }

    @Override
    public double ampsAt(double across) {
        double above = across - volts;
        return above > 0.0 ? above / ohms : above * LEAK_SIEMENS;
    }

    @Override
    public double siemensAt(double across, double amps) {
        return across > volts ? 1.0 / ohms : LEAK_SIEMENS;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return Math.max(volts, emfVolts);
    }

    @Override
    public double flatBelowVolts() {
        return volts;
    }
}
