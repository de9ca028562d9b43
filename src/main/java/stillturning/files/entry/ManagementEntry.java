package stillturning.files.entry;

import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.yaml.notation.Bounds;
import stillturning.yaml.notation.Default;
import stillturning.yaml.notation.Describes;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.OfDimension;

/** A battery's management system. */
@Describes("Disconnects the battery to protect its cells, and connects it again.")
public record ManagementEntry(
        @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Given underVoltage,
        @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Given overVoltage,
        @OfDimension(value = Dimension.CURRENT, above = "0 A") Given overCurrent,
        @Describes("How long a limit must be passed, unless it has a time of its own.")
                @OfDimension(value = Dimension.TIME, least = "0 s")
                Given after,
        @Describes("Largest charging current; none if not written.")
                @OfDimension(value = Dimension.CURRENT, above = "0 A")
                Optional<Given> chargeCurrent,
        @Describes("Disconnects above this temperature; not watched if not written.")
                @OfDimension(value = Dimension.TEMPERATURE, above = "0 °C", most = "200 °C")
                Optional<Given> hot,
        @Describes("Takes in no charge below this temperature; not watched if not written.")
                @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "40 °C")
                Optional<Given> coldForCharging,
        @Default("{}") TimesEntry times,
        @Default("{}") ReconnectsEntry reconnects) {

    /** Times of single limits. */
    @Describes("How long single limits must be passed.")
    public record TimesEntry(
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Given> underVoltage,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Given> overVoltage,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Given> overCurrent,
            @OfDimension(value = Dimension.TIME, least = "0 s") Optional<Given> chargeCurrent,
            @Describes("Of either temperature.") @OfDimension(value = Dimension.TIME, least = "0 s")
                    Optional<Given> temperature) {}

    /** When a management connects its battery again. */
    @Describes("When a disconnected battery comes back.")
    public record ReconnectsEntry(
            @Describes("After under-voltage: when its terminals see this; 13 V of a 12 V battery.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> charger,
            @Describes("... for this long.")
                    @Default("5 s")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Given chargerFor,
            @Describes("After over-voltage: when its terminals see less; its over-voltage.")
                    @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> below,
            @Describes("After too much current: so much later.")
                    @Default("30 s")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Given pause,
            @Describes("... and so often.") @Default("3") @Bounds(least = 0, most = 10) int tries,
            @Describes("After heat: when it has cooled to this; 10 K less than hot.")
                    @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "200 °C")
                    Optional<Given> cooled) {}
}
