package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * Winding that moves contacts, with hysteresis: pulls in at or above one voltage, lets go below a
 * lower one, each after its delay. Acts on the size of the voltage, not on its sign.
 */
public record Coil(
        String name,
        String from,
        String to,
        double ohms,
        double pullInVolts,
        double dropOutVolts,
        double pullInSeconds,
        double dropOutSeconds)
        implements Element {

    public Coil {
        Require.positive(name, "coil resistance (ohm)", ohms);
        Require.positive(name, "drop-out voltage (V)", dropOutVolts);
        Require.positive(name, "pull-in voltage (V)", pullInVolts);
        Require.notNegative(name, "pull-in delay (s)", pullInSeconds);
        Require.notNegative(name, "drop-out delay (s)", dropOutSeconds);
        if (dropOutVolts >= pullInVolts) {
            throw new IllegalArgumentException(
                    name
                            + ": drop-out voltage "
                            + dropOutVolts
                            + " V is not below the pull-in voltage "
                            + pullInVolts
                            + " V");
        }
    }
}
