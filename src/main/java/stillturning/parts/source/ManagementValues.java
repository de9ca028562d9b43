package stillturning.parts.source;

import java.util.Optional;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Management.Temperatures;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/** What is known of a battery's management system. */
@Describes("Disconnects the battery to protect its cells, and connects it again.")
public record ManagementValues(
        @OfDimension(value = Dimension.VOLTAGE, above = "0 V") double underVoltage,
        @OfDimension(value = Dimension.VOLTAGE, above = "0 V") double overVoltage,
        @OfDimension(value = Dimension.CURRENT, above = "0 A") double overCurrent,
        @Describes("How long a limit must be passed, unless it has a time of its own.")
                @OfDimension(value = Dimension.TIME, least = "0 s")
                double after,
        @Describes("Largest charging current; none if not written.")
                @OfDimension(value = Dimension.CURRENT, above = "0 A")
                Optional<Double> chargeCurrent,
        @Describes("Disconnects above this temperature; not watched if not written.")
                @OfDimension(value = Dimension.TEMPERATURE, above = "0 °C", most = "200 °C")
                Optional<Double> hot,
        @Describes("Takes in no charge below this temperature; not watched if not written.")
                @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "40 °C")
                Optional<Double> coldForCharging,
        @Default("{}") Times times,
        @Default("{}") Reconnects reconnects) {

    /** A charger is at work where the terminals of a nominal 12 V battery see this (V). A guess. */
    private static final double CHARGER_VOLTS = 13;

    /** A battery that was too hot has to cool by so much (K). A guess. */
    private static final double COOLS_BY_KELVIN = 10;

    /** Times of single limits. */
    @Describes("How long single limits must be passed.")
    public record Times(
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Double> underVoltage,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Double> overVoltage,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Double> overCurrent,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Double> chargeCurrent,
            @Describes("Of either temperature.") @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Double> temperature) {}

    /** When a management connects its battery again. */
    @Describes("When a disconnected battery comes back.")
    public record Reconnects(
            @Describes("After under-voltage: when its terminals see this; 13 V of a 12 V battery.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Double> charger,
            @Describes("... for this long.")
                    @Default("5 s")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    double chargerFor,
            @Describes("After over-voltage: when its terminals see less; its over-voltage.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Double> below,
            @Describes("After too much current: so much later.")
                    @Default("30 s")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    double pause,
            @Describes("... and so often.") @Default("3") @Bounds(least = 0, most = 10) int tries,
            @Describes("After heat: when it has cooled to this; 10 K less than hot.")
                    @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "200 °C")
                    Optional<Double> cooled) {}

    public ManagementValues {
        boolean watched = hot.isPresent() || coldForCharging.isPresent();
        belongs(
                "times.charge-current",
                times.chargeCurrent,
                "charge-current",
                chargeCurrent.isPresent());
        belongs("times.temperature", times.temperature, "hot or cold-for-charging", watched);
        belongs("reconnects.cooled", reconnects.cooled, "hot", hot.isPresent());
    }

    /** What says more about something else is nothing without it. */
    private static void belongs(String key, Optional<Double> written, String to, boolean there) {
        if (written.isPresent() && !there) {
            throw new IllegalArgumentException(
                    "battery management: " + key + " stands there without " + to);
        }
    }

    /**
     * The management.
     *
     * @param blocks how many times 12 V the battery has
     */
    Management made(double blocks) {
        double chargerVolts = reconnects.charger.orElse(CHARGER_VOLTS * blocks);
        return new Management(
                limit(underVoltage, times.underVoltage),
                limit(overVoltage, times.overVoltage),
                limit(overCurrent, times.overCurrent),
                limit(chargeCurrent.orElse(Double.POSITIVE_INFINITY), times.chargeCurrent),
                temperatures(),
                new Reconnection(
                        new Limit(chargerVolts, reconnects.chargerFor),
                        reconnects.below.orElse(overVoltage),
                        reconnects.pause,
                        reconnects.tries));
    }

    private Optional<Temperatures> temperatures() {
        if (hot.isEmpty() && coldForCharging.isEmpty()) {
            return Optional.empty();
        }
        double most = hot.orElse(Double.POSITIVE_INFINITY);
        double least = coldForCharging.orElse(Double.NEGATIVE_INFINITY);
        return Optional.of(
                new Temperatures(
                        limit(most, times.temperature),
                        limit(least, times.temperature),
                        reconnects.cooled.orElse(most - COOLS_BY_KELVIN)));
    }

    private Limit limit(double at, Optional<Double> seconds) {
        return new Limit(at, seconds.orElse(after));
    }
}
