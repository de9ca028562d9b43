package stillturning.network.law;

/** No connection: no current, whatever the voltage. */
public enum Open implements BranchLaw {
    CIRCUIT;

    @Override
    public double ampsAt(double volts) {
        return 0.0;
    }

    @Override
    public double siemensAt(double volts, double amps) {
        return 0.0;
    }

    @Override
    public boolean conducts() {
        return false;
    }
}
