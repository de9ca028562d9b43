package stillturning.yaml;

import java.util.Optional;
import java.util.regex.Pattern;
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

    private static final Pattern SEPARATOR = Pattern.compile(" *[,:] *");

    /** The text that reads back as this value. */
    public String written() {
        if (origin == Origin.STATED) {
            return quantity.written();
        }
        String because = note.isEmpty() ? "" : ", " + note;
        return quantity.written() + " (" + origin.words() + because + ")";
    }

    /** Reads one from a text; absent after a fault was told. */
    public static Optional<Given> read(String text, Dimension wanted, TextForm.Faults faults) {
        int open = text.indexOf('(');
        Optional<Quantity> quantity =
                quantity(open < 0 ? text : text.substring(0, open).stripTrailing(), wanted, faults);
        if (open < 0) {
            return quantity.map(q -> new Given(q, Origin.STATED, ""));
        }
        if (!text.endsWith(")")) {
            faults.at(
                    open,
                    "the bracket is not closed at the end",
                    "write " + text.substring(0, open) + "(" + Origin.GUESSED.words() + ")");
            return Optional.empty();
        }
        String[] parts = SEPARATOR.split(text.substring(open + 1, text.length() - 1), 2);
        Optional<Origin> origin = origin(parts[0].strip(), open + 1, faults);
        String note = parts.length > 1 ? parts[1].strip() : "";
        return quantity.flatMap(q -> origin.map(o -> new Given(q, o, note)));
    }

    private static Optional<Quantity> quantity(
            String text, Dimension wanted, TextForm.Faults faults) {
        try {
            return Optional.of(Quantity.parse(text, wanted));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }

    private static Optional<Origin> origin(String words, int at, TextForm.Faults faults) {
        Optional<Origin> origin = Origin.called(words);
        if (origin.isEmpty()) {
            String choices = String.join(", ", Origin.choices());
            faults.at(
                    at,
                    "\"" + Shown.of(words) + "\" is no origin of a value",
                    Spelling.didYouMean(words, Origin.choices())
                            + "write one of "
                            + choices
                            + ", then a comma and a note if you like");
        }
        return origin;
    }

    /** Regular expression for the text, without anchors. */
    static String pattern(Dimension dimension) {
        return dimension.pattern()
                + "(\\( *("
                + String.join("|", Origin.choices())
                + "|guessed) *([,:].*)?\\))?";
    }
}
