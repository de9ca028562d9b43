package stillturning.yaml;

import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;

/**
 * A quantity and where it comes from: {@code 20 Ah}, {@code 1.2 A (measured)}, {@code 2.5 A
 * (guess)}, {@code 12 mohm (data sheet, curve 3)}. A colon may stand for the comma if the text is
 * in quotes.
 *
 * @param note what else is said about the origin, or empty
 */
public record Given(Quantity quantity, Origin origin, String note) {

    /** The text that reads back as this value. */
    public String written() {
        return OriginText.written(quantity.written(), origin, note);
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<Given> read(String text, Dimension wanted, TextForm.Faults faults) {
        OriginText parts = OriginText.read(text, faults);
        try {
            Quantity quantity = Quantity.parse(parts.value(), wanted);
            return parts.origin().map(origin -> new Given(quantity, origin, parts.note()));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }
}
