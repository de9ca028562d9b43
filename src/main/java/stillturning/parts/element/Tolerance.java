package stillturning.parts.element;

import stillturning.parts.element.curve.Require;

/**
 * What supply a load puts up with.
 *
 * @param minimumVolts works at or above this (V)
 * @param restartVolts once stopped, comes back at or above this (V)
 * @param rideThroughSeconds keeps working this long below the minimum (s)
 * @param bootSeconds time from restart voltage to working again (s)
 * @param withstandVolts lost when this is exceeded (V); infinite if never
 * @param withstandSeconds ... for this long (s)
 */
public record Tolerance(
        double minimumVolts,
        double restartVolts,
        double rideThroughSeconds,
        double bootSeconds,
        double withstandVolts,
        double withstandSeconds) {

    public Tolerance {
        Require.positive("load", "minimum voltage (V)", minimumVolts);
        Require.notNegative("load", "ride-through (s)", rideThroughSeconds);
        Require.notNegative("load", "time to come back (s)", bootSeconds);
        Require.notNegative("load", "withstand time (s)", withstandSeconds);
        if (!(restartVolts >= minimumVolts)) {
            throw new IllegalArgumentException(
                    "load: restart voltage "
                            + restartVolts
                            + " V is below the minimum "
                            + minimumVolts
                            + " V");
        }
        if (!(withstandVolts > minimumVolts)) {
            throw new IllegalArgumentException(
                    "load: withstand voltage "
                            + withstandVolts
                            + " V is not above the minimum "
                            + minimumVolts
                            + " V");
        }
    }
}
