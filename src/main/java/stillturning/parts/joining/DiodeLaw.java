package stillturning.parts.joining;

import stillturning.parts.element.Rectifier;

/**
 * How a diode drops voltage.
 *
 * @param saturationAmps saturation current (A)
 * @param emissionVolts emission coefficient times thermal voltage (V)
 * @param ohms series resistance (ohm)
 */
public record DiodeLaw(double saturationAmps, double emissionVolts, double ohms) {

    /** Emission coefficient 1.06 times kT/q at 300 K: a good Schottky diode. A guess. */
    private static final double EMISSION_VOLTS = 0.0275;

    /**
     * The law of a diode with a forward voltage (V) at a current (A).
     *
     * @param ohms series resistance (ohm), which is part of that voltage
     */
    static DiodeLaw through(double drop, double at, double ohms) {
        double junctionVolts = drop - at * ohms;
        if (!(junctionVolts > 0)) {
            throw new IllegalArgumentException(
                    "diode: the series resistance alone drops "
                            + at * ohms
                            + " V, more than the forward voltage");
        }
        return new DiodeLaw(at / Math.expm1(junctionVolts / EMISSION_VOLTS), EMISSION_VOLTS, ohms);
    }

    /** A diode of this law between two terminals. */
    Rectifier between(String name, String anode, String cathode) {
        return new Rectifier(name, anode, cathode, saturationAmps, emissionVolts, ohms);
    }
}
