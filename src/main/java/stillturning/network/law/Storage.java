package stillturning.network.law;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A battery, its plus terminal at {@code from}: its voltage behind its resistance, giving no more
 * than its limit, and taking in by straight pieces that grow flatter and, where it gasses, steeper
 * again. Beyond what it gives the current goes on rising by {@link #LEAK_SIEMENS}.
 *
 * @param volts open-circuit voltage (V), at least 0
 * @param ohms internal resistance (ohm), at least 1e-9
 * @param giveAmps most that it gives (A), at least 0; infinite for no limit but its resistance
 */
public record Storage(double volts, double ohms, Intake intake, double giveAmps)
        implements BranchLaw {
    /** Slope where the ideal law is flat (S): 14 nA at 14 V. */
    public static final double LEAK_SIEMENS = 1e-9;

    /**
     * What charging meets: up to a current the internal resistance alone, beyond it a higher one;
     * and beside both the path of the gas.
     *
     * @param acceptAmps current up to which only the internal resistance counts (A), at least 0
     * @param beyondOhms resistance to what comes on top of that current (ohm), at least 1e-9
     * @param gas what becomes gas; counted from the open-circuit voltage on
     */
    public record Intake(double acceptAmps, double beyondOhms, GasPath gas) {
        /** Takes in nothing but the leak. */
        public static final Intake NONE = new Intake(0, 1 / LEAK_SIEMENS, GasPath.NEVER);

        /**
         * @throws IllegalArgumentException if a value is not a number or too small
         */
        public Intake {
            BranchChecks.notNegative("acceptAmps", acceptAmps);
            BranchChecks.ohms(beyondOhms);
        }

        // asked at every step: what a record brings along is slow where code is compiled quickly
        @Override
        public boolean equals(@Nullable Object other) {
            return this == other
                    || (other instanceof Intake that
                            && acceptAmps == that.acceptAmps
                            && beyondOhms == that.beyondOhms
                            && gas.equals(that.gas));
        }

        @Override
        public int hashCode() {
            return Objects.hash(acceptAmps, beyondOhms, gas);
        }
    }

    /**
     * @throws IllegalArgumentException if a value is not a number or too small
     */
    public Storage {
        BranchChecks.notNegative("volts", volts);
        BranchChecks.ohms(ohms);
        if (!(giveAmps >= 0)) {
            throw new IllegalArgumentException(
                    "giveAmps " + giveAmps + " is below 0 or no number; 0 gives nothing");
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Storage that
                && volts == that.volts
                && ohms == that.ohms
                && giveAmps == that.giveAmps
                && intake.equals(that.intake);
    }

    @Override
    public int hashCode() {
        return Objects.hash(volts, ohms, intake, giveAmps);
    }

    @Override
    public double ampsAt(double across) {
        double ideal = (across - volts) / ohms;
        if (ideal <= 0) {
            double beyond = -ideal - giveAmps;
            return beyond <= 0 ? ideal : -giveAmps - LEAK_SIEMENS * ohms * beyond;
        }
        double beyond = across - flatAboveVolts();
        double accepted = beyond <= 0 ? ideal : intake.acceptAmps() + beyond / intake.beyondOhms();
        return accepted + gassingAmps(across);
    }

    @Override
    public double siemensAt(double across, double amps) {
        double ideal = (across - volts) / ohms;
        if (ideal <= 0) {
            return -ideal <= giveAmps ? 1 / ohms : LEAK_SIEMENS;
        }
        double accepting = across <= flatAboveVolts() ? 1 / ohms : 1 / intake.beyondOhms();
        return accepting + intake.gas().siemensAt(across);
    }

    /** The part of the current at a voltage across it that becomes gas, not charge (A). */
    public double gassingAmps(double across) {
        double gassing = intake.gas().ampsAt(across);
        return gassing == 0 ? 0 : Math.max(0, gassing - intake.gas().ampsAt(volts));
    }

    /** Whether it can be charged at all. */
    @Override
    public boolean takesUp() {
        return !intake.equals(Intake.NONE);
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
        return volts + ohms * intake.acceptAmps();
    }
}
