package stillturning.network.law;

/**
 * A load that draws the same current at any voltage from its floor up, and below the floor is the
 * resistance that draws that current at the floor.
 *
 * @param amps current (A), at least 0
 * @param floorVolts lowest voltage at which it holds its current (V), above 0
 */
public record ConstantCurrent(double amps, double floorVolts) implements BranchLaw {
    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public ConstantCurrent {
        BranchChecks.notNegative("amps", amps);
        BranchChecks.positive("floorVolts", floorVolts);
    }

    @Override
    public double ampsAt(double volts) {
        return volts >= floorVolts ? amps : amps * volts / floorVolts;
    }

    @Override
    public double siemensAt(double volts, double ampsThere) {
        return volts >= floorVolts ? 0.0 : amps / floorVolts;
    }

    @Override
    public boolean conducts() {
        return amps > 0.0;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return emfVolts;
    }
}
