package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * What a load draws, and how that changes with its voltage.
 *
 * @param amps current (A) at the nominal voltage
 * @param nominalVolts voltage (V) at which {@code amps} is meant
 */
public record Demand(Kind kind, double amps, double nominalVolts) {

    /** How the current answers to the voltage. */
    public enum Kind {
        CONSTANT_POWER,
        CONSTANT_CURRENT,
        CONSTANT_RESISTANCE
    }

    public Demand {
        Require.positive("load", "current (A)", amps);
        Require.positive("load", "nominal voltage (V)", nominalVolts);
    }

    /** Power at the nominal voltage (W). */
    public double watts() {
        return amps * nominalVolts;
    }

    /** Resistance that draws the same at the nominal voltage (ohm). */
    public double ohms() {
        return nominalVolts / amps;
    }
}
