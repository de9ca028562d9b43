package stillturning.network.law;

/**
 * A battery: a voltage behind a resistance, its plus terminal at {@code from}.
 *
 * @param volts open-circuit voltage (V), at least 0
 * @param ohms internal resistance (ohm), at least 1e-9
 */
public record SourceBehindOhms(double volts, double ohms) implements BranchLaw {
    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public SourceBehindOhms {
        BranchChecks.notNegative("volts", volts);
        BranchChecks.ohms(ohms);
    }

    @Override
    public double ampsAt(double across) {
        return (across - volts) / ohms;
    }

    @Override
    public double siemensAt(double across, double amps) {
        return 1.0 / ohms;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public boolean linear() {
        return true;
    }

    @Override
    public double emfVolts() {
        return volts;
    }
}
