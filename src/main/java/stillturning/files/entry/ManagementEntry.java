package stillturning.files.entry;

import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.yaml.Bounds;
import stillturning.yaml.Default;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/** A battery's management system. */
@Words("Disconnects the battery to protect its cells, and connects it again.")
public record ManagementEntry(
        @Unit(value = Dimension.VOLTAGE, above = "0 V") Given underVoltage,
        @Unit(value = Dimension.VOLTAGE, above = "0 V") Given overVoltage,
        @Unit(value = Dimension.CURRENT, above = "0 A") Given overCurrent,
        @Words("How long a limit must be passed, unless it has a time of its own.")
                @Unit(value = Dimension.TIME, least = "0 s")
                Given after,
        @Words("Largest charging current; none if not written.")
                @Unit(value = Dimension.CURRENT, above = "0 A")
                Optional<Given> chargeCurrent,
        @Words("Disconnects above this temperature; not watched if not written.")
                @Unit(value = Dimension.TEMPERATURE, above = "0 °C", most = "200 °C")
                Optional<Given> hot,
        @Words("Takes in no charge below this temperature; not watched if not written.")
                @Unit(value = Dimension.TEMPERATURE, above = "-60 °C", most = "40 °C")
                Optional<Given> coldForCharging,
        @Default("{}") TimesEntry times,
        @Default("{}") ReconnectsEntry reconnects) {

    /** Times of single limits. */
    @Words("How long single limits must be passed.")
    public record TimesEntry(
            @Unit(value = Dimension.TIME, least = "0 s") Optional<Given> underVoltage,
            @Unit(value = Dimension.TIME, least = "0 s") Optional<Given> overVoltage,
            @Unit(value = Dimension.TIME, least = "0 s") Optional<Given> overCurrent,
            @Unit(value = Dimension.TIME, least = "0 s") Optional<Given> chargeCurrent,
            @Words("Of either temperature.") @Unit(value = Dimension.TIME, least = "0 s")
                    Optional<Given> temperature) {}

    /** When a management connects its battery again. */
    @Words("When a disconnected battery comes back.")
    public record ReconnectsEntry(
            @Words("After under-voltage: when its terminals see this; 13 V of a 12 V battery.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> charger,
            @Words("... for this long.")
                    @Default("5 s")
                    @Unit(value = Dimension.TIME, least = "0 s")
                    Given chargerFor,
            @Words("After over-voltage: when its terminals see less; its over-voltage.")
                    @Unit(value = Dimension.VOLTAGE, above = "0 V")
                    Optional<Given> below,
            @Words("After too much current: so much later.")
                    @Default("30 s")
                    @Unit(value = Dimension.TIME, above = "0 s")
                    Given pause,
            @Words("... and so often.") @Default("3") @Bounds(least = 0, most = 10) int tries,
            @Words("After heat: when it has cooled to this; 10 K less than hot.")
                    @Unit(value = Dimension.TEMPERATURE, above = "-60 °C", most = "200 °C")
                    Optional<Given> cooled) {}
}
