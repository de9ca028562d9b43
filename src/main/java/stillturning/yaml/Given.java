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
        return new Source(origin, note).after(quantity.written());
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<Given> read(String text, Dimension wanted, TextForm.Faults faults) {
        int open = text.indexOf('(');
        Optional<Source> source = Source.read(text, open, faults);
        try {
            Quantity quantity = Quantity.parse(Source.valueBefore(open, text), wanted);
            return source.map(from -> new Given(quantity, from.origin(), from.note()));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }
}
