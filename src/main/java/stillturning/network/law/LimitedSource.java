package stillturning.network.law;

/**
 * A regulated charging source with droop, its plus terminal at {@code from}: delivers (set -
 * V)/droop between nothing and its limit, and blocks reverse current. Beyond either end the current
 * goes on rising by {@link #LEAK_SIEMENS}. With a limit of 0 it is an open branch.
 *
 * @param setVolts voltage without load (V), at least 0
 * @param droopOhms fall of voltage with current (ohm), at least 1e-9
 * @param limitAmps most it delivers (A), at least 0
 */
public record LimitedSource(double setVolts, double droopOhms, double limitAmps)
        implements BranchLaw {
    /** Slope where the ideal law is flat (S): 14 nA at 14 V. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public LimitedSource {
        BranchChecks.notNegative("setVolts", setVolts);
        BranchChecks.ohms(droopOhms);
        BranchChecks.notNegative("limitAmps", limitAmps);
    }

    @Override
    public double ampsAt(double volts) {
        double below = setVolts - volts;
        if (limitAmps == 0.0) {
            return 0.0;
        }
        if (below <= 0.0) {
            return -LEAK_SIEMENS * below;
        }
        double knee = droopOhms * limitAmps;
        return below < knee ? -below / droopOhms : -limitAmps - LEAK_SIEMENS * (below - knee);
    }

    @Override
    public double siemensAt(double volts, double amps) {
        double below = setVolts - volts;
        boolean regulating = below > 0.0 && below < droopOhms * limitAmps;
        if (limitAmps == 0.0) {
            return 0.0;
        }
        return regulating ? 1.0 / droopOhms : LEAK_SIEMENS;
    }

    @Override
    public boolean conducts() {
        return limitAmps > 0.0;
    }

    @Override
    public double emfVolts() {
        return limitAmps > 0.0 ? setVolts : 0.0;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return setVolts - 0.5 * droopOhms * limitAmps;
    }

    @Override
    public double flatBelowVolts() {
        return setVolts - droopOhms * limitAmps;
    }

    @Override
    public double flatAboveVolts() {
        return setVolts;
    }
}
