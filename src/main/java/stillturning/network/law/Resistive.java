package stillturning.network.law;

/**
 * Ohm's law: a wire, a contact, a heater.
 *
 * @param ohms resistance (ohm), at least 1e-9
 */
public record Resistive(double ohms) implements BranchLaw {
    /**
     * @throws IllegalArgumentException if {@code ohms} is not finite or below 1e-9
     */
    public Resistive {
        BranchChecks.ohms(ohms);
    }

    @Override
    public double ampsAt(double volts) {
        return volts / ohms;
    }

    @Override
    public double siemensAt(double volts, double amps) {
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
}
