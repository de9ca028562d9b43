package stillturning.yaml;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A text that ends in brackets which say where its value comes from.
 *
 * @param value the text before the brackets
 * @param origin absent if the brackets name none that exists
 */
record OriginText(String value, Optional<Origin> origin, String note) {

    private static final Pattern SEPARATOR = Pattern.compile(" *[,:] *");

    /** Takes a text apart; tells a fault if the brackets are not as they should be. */
    static OriginText read(String text, TextForm.Faults faults) {
        int open = text.indexOf('(');
        if (open < 0) {
            return new OriginText(text, Optional.of(Origin.STATED), "");
        }
        String value = text.substring(0, open).stripTrailing();
        if (!text.endsWith(")")) {
            faults.at(
                    open,
                    "the bracket is not closed at the end",
                    // inside braces a comma ends the text unless it is quoted
                    "close it; inside { } or [ ] put a text with a comma in quotes");
            return new OriginText(value, Optional.empty(), "");
        }
        String[] parts = SEPARATOR.split(text.substring(open + 1, text.length() - 1), 2);
        String note = parts.length > 1 ? parts[1].strip() : "";
        return new OriginText(value, origin(parts[0].strip(), open + 1, faults), note);
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

    /** The text that reads back as a value with its origin. */
    static String written(String value, Origin origin, String note) {
        if (origin == Origin.STATED) {
            return value;
        }
        return value + " (" + origin.words() + (note.isEmpty() ? "" : ", " + note) + ")";
    }

    /** Regular expression for the brackets or nothing, without anchors. */
    static String pattern() {
        return "(\\( *(" + String.join("|", Origin.choices()) + "|guessed) *([,:].*)?\\))?";
    }
}
