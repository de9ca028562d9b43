package stillturning.yaml.notation;

import java.util.Optional;
import java.util.regex.Pattern;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Spelling;

/**
 * Where a value comes from, and what else is said about that: {@code (measured)}, {@code (data
 * sheet, curve 3)}. A colon may stand for the comma if the text is in quotes.
 *
 * @param note what else is said, or empty
 */
public record Source(Origin origin, String note) {

    /** Said of a value without a bracket. */
    public static final Source STATED = new Source(Origin.STATED, "");

    private static final Pattern SEPARATOR = Pattern.compile(" *[,:] *");

    /** The value's text with its source in brackets. */
    public String after(String value) {
        if (origin == Origin.STATED) {
            return value;
        }
        return value + " (" + origin.words() + (note.isEmpty() ? "" : ", " + note) + ")";
    }

    /**
     * Reads the bracket that ends a text; absent after a fault was told.
     *
     * @param open index of the opening bracket in the text; below 0 if there is none
     */
    public static Optional<Source> read(String text, int open, TextForm.FaultReceiver faults) {
        if (open < 0) {
            return Optional.of(STATED);
        }
        if (!text.endsWith(")")) {
            faults.at(
                    open,
                    "the bracket is not closed at the end",
                    // inside braces a comma ends the text unless it is quoted
                    "close it; inside { } or [ ] put a text with a comma in quotes");
            return Optional.empty();
        }
        String[] parts = SEPARATOR.split(text.substring(open + 1, text.length() - 1), 2);
        String note = parts.length > 1 ? parts[1].strip() : "";
        return origin(parts[0].strip(), open + 1, faults).map(o -> new Source(o, note));
    }

    private static Optional<Origin> origin(String words, int at, TextForm.FaultReceiver faults) {
        Optional<Origin> origin = Origin.called(words);
        if (origin.isEmpty()) {
            String choices = String.join(", ", Origin.choices());
            faults.at(
                    at,
                    "\"" + Excerpt.of(words) + "\" is no origin of a value",
                    Spelling.didYouMean(words, Origin.choices())
                            + "write one of "
                            + choices
                            + ", then a comma and a note if you like");
        }
        return origin;
    }

    /** The text before the bracket. */
    static String valueBefore(int open, String text) {
        return open < 0 ? text : text.substring(0, open).stripTrailing();
    }

    /** Regular expression for the brackets or nothing, without anchors. */
    public static String pattern() {
        return "(\\( *(" + String.join("|", Origin.choices()) + "|guessed) *([,:].*)?\\))?";
    }
}
