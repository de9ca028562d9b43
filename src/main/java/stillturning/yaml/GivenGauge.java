package stillturning.yaml;

import java.util.Optional;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.WireGauge;

/**
 * A wire gauge and where it comes from: {@code AWG 16}, {@code 4 mm2 (measured)}.
 *
 * @param note what else is said about the origin, or empty
 */
public record GivenGauge(WireGauge gauge, Origin origin, String note) {

    /** The text that reads back as this value. */
    public String written() {
        return OriginText.written(gauge.name(), origin, note);
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<GivenGauge> read(String text, TextForm.Faults faults) {
        OriginText parts = OriginText.read(text, faults);
        try {
            WireGauge gauge = WireGauge.parse(parts.value());
            return parts.origin().map(origin -> new GivenGauge(gauge, origin, parts.note()));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }
}
