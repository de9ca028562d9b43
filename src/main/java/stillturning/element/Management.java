package stillturning.element;

/**
 * Disconnects a battery to protect its cells, each limit after the given time beyond it.
 *
 * @param underVolts disconnects below this terminal voltage (V) while discharging
 * @param overVolts disconnects above this terminal voltage (V)
 * @param overAmps disconnects above this discharge current (A)
 * @param seconds how long a limit must be passed (s)
 */
public record Management(double underVolts, double overVolts, double overAmps, double seconds) {

    public Management {
        Require.positive("battery management", "under-voltage (V)", underVolts);
        Require.positive("battery management", "over-voltage (V)", overVolts);
        Require.positive("battery management", "over-current (A)", overAmps);
        Require.notNegative("battery management", "delay (s)", seconds);
    }
}
