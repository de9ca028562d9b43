package stillturning.network.law;

/**
 * A load that draws the same power at any voltage from its floor up, and below the floor is the
 * resistance that draws the same current at the floor.
 *
 * @param watts power (W), at least 0
 * @param floorVolts lowest voltage at which it holds its power (V), above 0
 */
public record ConstantPower(double watts, double floorVolts) implements BranchLaw {
    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public ConstantPower {
        BranchChecks.notNegative("watts", watts);
        BranchChecks.positive("floorVolts", floorVolts);
    }

    @Override
    public double ampsAt(double volts) {
        return volts >= floorVolts ? watts / volts : watts * volts / (floorVolts * floorVolts);
    }

    @Override
    public double siemensAt(double volts, double amps) {
        return volts >= floorVolts ? -watts / (volts * volts) : watts / (floorVolts * floorVolts);
    }

    @Override
    public boolean conducts() {
        return watts > 0.0;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return emfVolts;
    }
}
