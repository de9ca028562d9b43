package stillturning.files.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.quantity.Dimension;
import stillturning.quantity.Spread;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.TextForm;

/**
 * A stretch of a one-line text.
 *
 * @param text without blanks around it
 * @param offset where it starts in the whole text
 */
record TextPiece(String text, int offset) {

    private static final int LONGEST_SHOWN = 40;
    private static final Pattern WORD = Pattern.compile("[^ \t\r\n]+");

    /**
     * The stretches between commas that stand outside brackets; at least one. A comma between two
     * digits is left in, since nobody writes another item there: whatever reads the number refuses
     * it.
     */
    static List<TextPiece> splitAtCommas(String text) {
        List<TextPiece> pieces = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth = c == '(' ? depth + 1 : c == ')' ? Math.max(0, depth - 1) : depth;
            if (c == ',' && depth == 0 && !isDecimal(text, i)) {
                pieces.add(part(text, start, i, 0));
                start = i + 1;
            }
        }
        pieces.add(part(text, start, text.length(), 0));
        return List.copyOf(pieces);
    }

    private static boolean isDecimal(String text, int comma) {
        return comma > 0
                && comma + 1 < text.length()
                && isDigit(text.charAt(comma - 1))
                && isDigit(text.charAt(comma + 1));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static TextPiece part(String text, int start, int end, int offset) {
        String cut = text.substring(start, end);
        return new TextPiece(
                cut.strip(), offset + start + cut.length() - cut.stripLeading().length());
    }

    /** Its words. */
    List<TextPiece> words() {
        List<TextPiece> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            words.add(new TextPiece(matcher.group(), offset + matcher.start()));
        }
        return List.copyOf(words);
    }

    /** What stands from an index of its text on. */
    TextPiece from(int start) {
        return part(text, start, text.length(), offset);
    }

    /** What stands before an index of its text. */
    TextPiece upTo(int end) {
        return part(text, 0, end, offset);
    }

    int end() {
        return offset + text.length();
    }

    String shown() {
        return shown(text);
    }

    static String shown(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }

    /** A quantity greater than zero; absent after a fault was told. */
    Optional<Given> above0(Dimension dimension, TextForm.FaultReceiver faults) {
        Optional<Given> given = Given.read(text, dimension, faults.from(offset));
        if (given.isPresent() && !(lowest(given.get()) > 0)) {
            faults.at(
                    offset,
                    given.get().value() + " is out of range",
                    "write more than 0 " + dimension.customary());
            return Optional.empty();
        }
        return given;
    }

    private static double lowest(Given given) {
        return given.quantity().si() - given.spread().map(Spread::si).orElse(0.0);
    }
}
