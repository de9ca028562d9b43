package stillturning.parts.element;

import java.util.Optional;
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
 * @param ownBattery what it works on once its feed is lost, if it has that
 */
public record Tolerance(
        double minimumVolts,
        double restartVolts,
        double rideThroughSeconds,
        double bootSeconds,
        double withstandVolts,
        double withstandSeconds,
        Optional<OwnBattery> ownBattery) {

    /**
     * A battery inside a load, for itself alone.
     *
     * @param seconds how long it keeps the load working from full (s)
     * @param rechargeSeconds how long it takes from empty to full, at a steady rate (s)
     */
    public record OwnBattery(double seconds, double rechargeSeconds) {
        public OwnBattery {
            Require.positive("load", "time on its own battery (s)", seconds);
            Require.positive("load", "time to charge its own battery (s)", rechargeSeconds);
        }
    }

    /** Of a load without a battery of its own. */
    public Tolerance(
            double minimumVolts,
            double restartVolts,
            double rideThroughSeconds,
            double bootSeconds,
            double withstandVolts,
            double withstandSeconds) {
        this(
                minimumVolts,
                restartVolts,
                rideThroughSeconds,
                bootSeconds,
                withstandVolts,
                withstandSeconds,
                Optional.empty());
    }

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

    /** The same with a battery of its own. */
    public Tolerance with(OwnBattery battery) {
        return new Tolerance(
                minimumVolts,
                restartVolts,
                rideThroughSeconds,
                bootSeconds,
                withstandVolts,
                withstandSeconds,
                Optional.of(battery));
    }
}
