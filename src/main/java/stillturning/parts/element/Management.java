package stillturning.parts.element;

import java.util.Optional;
import stillturning.parts.element.curve.Require;

/**
 * Takes a battery off its terminals to protect its cells, each limit after its time, and puts it
 * back.
 *
 * @param underVolts terminal voltage (V) below which it disconnects while discharging
 * @param overVolts terminal voltage (V) above which it disconnects
 * @param overAmps discharge current (A) above which it disconnects
 * @param chargeAmps charging current (A) above which it disconnects; infinite for no limit
 * @param temperatures what it watches of them; empty if nothing
 * @param reconnection when it comes back
 */
public record Management(
        Limit underVolts,
        Limit overVolts,
        Limit overAmps,
        Limit chargeAmps,
        Optional<Temperatures> temperatures,
        Reconnection reconnection) {

    /**
     * A limit and how long it must be passed.
     *
     * @param at the limit, in the unit of what it limits; infinite for none
     * @param seconds for how long (s)
     */
    public record Limit(double at, double seconds) {
        public Limit {
            if (Double.isNaN(at)) {
                throw new IllegalArgumentException("battery management: a limit is no number");
            }
            Require.notNegative("battery management", "delay (s)", seconds);
        }
    }

    /**
     * Temperatures of the battery.
     *
     * @param hotCelsius above which it disconnects (°C)
     * @param coldCelsius below which it takes in no charge (°C); it still gives
     * @param cooledCelsius below which a battery that was too hot comes back (°C)
     */
    public record Temperatures(Limit hotCelsius, Limit coldCelsius, double cooledCelsius) {
        public Temperatures {
            if (!(coldCelsius.at < hotCelsius.at)) {
                throw new IllegalArgumentException(
                        "battery management: too cold at %s °C is not below too hot at %s °C"
                                .formatted(coldCelsius.at, hotCelsius.at));
            }
            if (!(cooledCelsius <= hotCelsius.at)) {
                throw new IllegalArgumentException(
                        "battery management: cooled at %s °C is above too hot at %s °C"
                                .formatted(cooledCelsius, hotCelsius.at));
            }
        }
    }

    /**
     * When a disconnected battery comes back.
     *
     * @param chargerVolts after under-voltage: once the terminals see this (V) for that long
     * @param releaseVolts after over-voltage: once the terminals see less (V)
     * @param pauseSeconds after too much current: so much later (s)
     * @param tries ... and so often, after which it stays off
     */
    public record Reconnection(
            Limit chargerVolts, double releaseVolts, double pauseSeconds, int tries) {
        public Reconnection {
            Require.positive("battery management", "release voltage (V)", releaseVolts);
            Require.notNegative("battery management", "pause (s)", pauseSeconds);
            Require.notNegative("battery management", "tries", tries);
        }
    }

    public Management {
        Require.positive("battery management", "under-voltage (V)", underVolts.at);
        Require.positive("battery management", "over-voltage (V)", overVolts.at);
        Require.positive("battery management", "over-current (A)", overAmps.at);
        if (underVolts.at >= overVolts.at) {
            throw new IllegalArgumentException(
                    "battery management: under-voltage %s V is not below its over-voltage %s V"
                            .formatted(underVolts.at, overVolts.at));
        }
        if (reconnection.releaseVolts > overVolts.at) {
            throw new IllegalArgumentException(
                    "battery management: comes back below %s V, which is above its over-voltage %s V"
                            .formatted(reconnection.releaseVolts, overVolts.at));
        }
    }
}
