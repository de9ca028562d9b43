package stillturning.network.law;

/**
 * A solid-state channel: resistive both ways up to its current limit, from there on rising by
 * {@link #LEAK_SIEMENS}.
 *
 * @param ohms on-resistance (ohm), at least 1e-9
 * @param limitAmps current limit (A), above 0
 */
public record LimitedConductor(double ohms, double limitAmps) implements BranchLaw {
    /** Slope at the limit (S): 14 nA at 14 V. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public LimitedConductor {
        BranchChecks.ohms(ohms);
        BranchChecks.positive("limitAmps", limitAmps);
    }

    @Override
    public double ampsAt(double volts) {
        double knee = ohms * limitAmps;
        double beyond = Math.abs(volts) - knee;
        return beyond <= 0.0
                ? volts / ohms
                : Math.copySign(limitAmps + LEAK_SIEMENS * beyond, volts);
    }

    @Override
    public double siemensAt(double volts, double amps) {
        return Math.abs(volts) <= ohms * limitAmps ? 1.0 / ohms : LEAK_SIEMENS;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public double flatBelowVolts() {
        return -ohms * limitAmps;
    }

    @Override
    public double flatAboveVolts() {
        return ohms * limitAmps;
    }
}
