package stillturning.network;

/**
 * A battery, its plus terminal at {@code from}: its voltage behind its resistance, taking in and
 * giving out no more than its limits. Beyond a limit the current goes on rising by {@link
 * #LEAK_SIEMENS}.
 *
 * @param volts open-circuit voltage (V), at least 0
 * @param ohms internal resistance (ohm), at least 1e-9
 * @param acceptAmps most that it takes in (A), at least 0
 * @param giveAmps most that it gives (A), at least 0; infinite for no limit but its resistance
 */
public record Storage(double volts, double ohms, double acceptAmps, double giveAmps)
        implements BranchLaw {
    /** Slope where the ideal law is flat (S): 14 nA at 14 V. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * @throws IllegalArgumentException if a value is not a number or too small
     */
    public Storage {
        Guard.notNegative("volts", volts);
        Guard.ohms(ohms);
        Guard.notNegative("acceptAmps", acceptAmps);
        if (!(giveAmps >= 0)) {
            throw new IllegalArgumentException(
                    "giveAmps " + giveAmps + " is below 0 or no number; 0 gives nothing");
        }
    }

    @Override
    public double ampsAt(double across) {
        double ideal = (across - volts) / ohms;
        double bound = ideal > 0 ? acceptAmps : giveAmps;
        double beyond = Math.abs(ideal) - bound;
        return beyond <= 0 ? ideal : Math.copySign(bound + LEAK_SIEMENS * ohms * beyond, ideal);
    }

    @Override
    public double siemensAt(double across, double amps) {
        double ideal = (across - volts) / ohms;
        double bound = ideal > 0 ? acceptAmps : giveAmps;
        return Math.abs(ideal) <= bound ? 1 / ohms : LEAK_SIEMENS;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public double emfVolts() {
        return giveAmps > 0 ? volts : 0;
    }

    @Override
    public double likelyVolts(double highestVolts) {
        return volts;
    }

    @Override
    public double flatBelowVolts() {
        return volts - ohms * giveAmps;
    }

    @Override
    public double flatAboveVolts() {
        return volts + ohms * acceptAmps;
    }
}
