package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * What a load draws, and how that changes with its voltage.
 *
 * @param amps current (A) at the nominal voltage; of what is self-powered, what flows where its
 *     terminals are joined
 * @param nominalVolts voltage (V) at which {@code amps} is meant; of what is self-powered, its own
 */
public record Demand(DemandKind kind, double amps, double nominalVolts) {

    /** How the current answers to the voltage. */
    public enum DemandKind {
        CONSTANT_POWER,
        CONSTANT_CURRENT,
        CONSTANT_RESISTANCE,
        /**
         * Makes its own current, and needs none: across its terminals stands its nominal voltage,
         * behind a resistance, until they are joined.
         */
        SELF_POWERED
    }

    public Demand {
        if (kind == DemandKind.SELF_POWERED) {
            Require.notNegative("load", "current (A)", amps);
        } else {
            Require.positive("load", "current (A)", amps);
        }
        Require.positive("load", "nominal voltage (V)", nominalVolts);
    }

    /** Power at the nominal voltage (W). */
    public double watts() {
        return amps * nominalVolts;
    }

    /** Whether it works without any supply. */
    public boolean selfPowered() {
        return kind == DemandKind.SELF_POWERED;
    }

    /** Resistance that draws the same at the nominal voltage, or inside its own source (ohm). */
    public double ohms() {
        return nominalVolts / amps;
    }
}
