package stillturning.yaml.notation;

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
        return new Source(origin, note).after(gauge.name());
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<GivenGauge> read(String text, TextForm.FaultReceiver faults) {
        int open = text.indexOf('(');
        Optional<Source> source = Source.read(text, open, faults);
        try {
            WireGauge gauge = WireGauge.parse(Source.valueBefore(open, text));
            return source.map(from -> new GivenGauge(gauge, from.origin(), from.note()));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }
}
