package stillturning.network.law;

/**
 * A diode from {@code from} (anode) to {@code to}: exponential law with a series resistance, and
 * {@link #LEAK_SIEMENS} across the whole.
 *
 * @param saturationAmps saturation current (A), above 0
 * @param emissionVolts emission coefficient times thermal voltage, n kT/q (V), above 0
 * @param ohms series resistance (ohm), at least 1e-9
 */
public record DiodeDrop(double saturationAmps, double emissionVolts, double ohms)
        implements BranchLaw {
    /**
     * Slope in the reverse direction (S): 14 µA at 14 V, far below what Schottky data sheets allow
     * (2 mA at rated voltage, 25 °C).
     */
    public static final double LEAK_SIEMENS = 1e-6;

    /**
     * @throws IllegalArgumentException if a value is not finite or too small
     */
    public DiodeDrop {
        BranchChecks.positive("saturationAmps", saturationAmps);
        BranchChecks.positive("emissionVolts", emissionVolts);
        BranchChecks.ohms(ohms);
    }

    @Override
    public double ampsAt(double volts) {
        double scale = emissionVolts / ohms;
        double part = saturationAmps / scale;
        double x = Math.log(part) + part + volts / emissionVolts;
        return scale * WrightOmega.of(x) - saturationAmps + LEAK_SIEMENS * volts;
    }

    @Override
    public double siemensAt(double volts, double amps) {
        double carried = Math.max(0.0, amps - LEAK_SIEMENS * volts + saturationAmps);
        double junction = carried / emissionVolts;
        return junction / (1.0 + junction * ohms) + LEAK_SIEMENS;
    }

    /**
     * A diode that turns off would walk down its exponential by a few tens of millivolts a line.
     */
    @Override
    public double nextVolts(double volts, double amps) {
        return amps > 0 ? emissionVolts * Math.log1p(amps / saturationAmps) + ohms * amps : volts;
    }

    @Override
    public boolean conducts() {
        return true;
    }

    @Override
    public double likelyVolts(double emfVolts) {
        return emissionVolts * Math.log1p(1.0 / saturationAmps) + ohms;
    }

    @Override
    public double flatBelowVolts() {
        return 0.0;
    }
}
