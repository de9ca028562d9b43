package stillturning.network.law;

/**
 * The input of a DC-DC converter: draws the power that its output branch delivers, divided by the
 * efficiency, and its idle power besides. Below the floor it is the resistance that draws the same
 * current at the floor. {@link #LEAK_SIEMENS} lies across it.
 *
 * @param outputBranch index of the branch that is the output (a source)
 * @param efficiency power out over power in without idle, above 0 and at most 1
 * @param idleWatts power drawn without load (W), at least 0
 * @param floorVolts lowest input voltage at which it keeps its power (V), above 0
 */
public record ConverterInput(
        int outputBranch, double efficiency, double idleWatts, double floorVolts)
        implements BranchLaw {
    /** Slope across the input (S): 14 nA at 14 V, so that an idle input still has a voltage. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public ConverterInput {
        if (outputBranch < 0) {
            throw new IllegalArgumentException(
                    "outputBranch is " + outputBranch + "; it must be the index of a branch");
        }
        BranchChecks.positive("efficiency", efficiency);
        if (efficiency > 1.0) {
            throw new IllegalArgumentException(
                    "efficiency is " + efficiency + "; it must be at most 1 (0.9 is 90 %)");
        }
        BranchChecks.notNegative("idleWatts", idleWatts);
        BranchChecks.positive("floorVolts", floorVolts);
    }

    /** Current of the converter with nothing on its output. */
    @Override
    public double ampsAt(double volts) {
        return ampsAt(volts, 0.0);
    }

    /**
     * Current at a voltage and an output.
     *
     * @param volts input voltage (V)
     * @param deliveredWatts power that the output branch delivers (W); below 0 counts as 0
     * @return input current (A)
     */
    public double ampsAt(double volts, double deliveredWatts) {
        double watts = idleWatts + Math.max(0.0, deliveredWatts) / efficiency;
        double drawn =
                volts >= floorVolts ? watts / volts : watts * volts / (floorVolts * floorVolts);
        return drawn + LEAK_SIEMENS * volts;
    }

    @Override
    public double siemensAt(double volts, double amps) {
        if (volts == 0.0) {
            return LEAK_SIEMENS + idleWatts / (floorVolts * floorVolts);
        }
        double drawn = (amps - LEAK_SIEMENS * volts) / volts;
        return (volts >= floorVolts ? -drawn : drawn) + LEAK_SIEMENS;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return emfVolts;
    }
}
