package stillturning.yaml.notation;

import java.util.Optional;
import java.util.regex.Matcher;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.Spread;
import stillturning.quantity.UnitSystem;

/**
 * A quantity, how far off it may be, and where it comes from: {@code 20 Ah}, {@code 1.2 A
 * (measured)}, {@code 2.5 A ±10 % (guess)}, {@code 12 mohm (data sheet, curve 3)}. A colon may
 * stand for the comma if the text is in quotes.
 *
 * @param spread how far off it may be, if that is said
 * @param note what else is said about the origin, or empty
 */
public record Given(Quantity quantity, Optional<Spread> spread, Origin origin, String note) {

    /** A value of which nobody says how far off it may be. */
    public Given(Quantity quantity, Origin origin, String note) {
        this(quantity, Optional.empty(), origin, note);
    }

    /** The text that reads back as this value. */
    public String written() {
        return new Source(origin, note).after(value());
    }

    /** The same without its origin. */
    public String value() {
        return quantity.written().stripTrailing() + spread.map(s -> " ±" + s.written()).orElse("");
    }

    /** The same with its units as a system has them, rounded for showing. */
    public Given in(UnitSystem system) {
        return new Given(
                quantity.in(system), spread.map(s -> s.in(system, quantity)), origin, note);
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<Given> read(
            String text, Dimension wanted, TextForm.FaultReceiver faults) {
        int open = text.indexOf('(');
        Optional<Source> source = Source.read(text, open, faults);
        String value = Source.valueBefore(open, text);
        Matcher sign = Spread.SIGN.matcher(value);
        boolean ranged = sign.find();
        int from = 0;
        try {
            Quantity quantity =
                    Quantity.parse(
                            ranged ? value.substring(0, sign.start()).stripTrailing() : value,
                            wanted);
            from = ranged ? sign.end() : 0;
            Optional<Spread> spread =
                    ranged
                            ? Optional.of(Spread.parse(value.substring(from), quantity))
                            : Optional.empty();
            return source.map(s -> new Given(quantity, spread, s.origin(), s.note()));
        } catch (MalformedQuantity malformed) {
            faults.at(from, malformed);
            return Optional.empty();
        }
    }
}
