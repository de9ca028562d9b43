package stillturning.report.page;

import java.util.regex.Pattern;

/** Finished text freed of what neither paper nor a page may be told by a name. */
public final class Printable {

    /** What stands for a character that cannot be shown. */
    public static final String UNSHOWN = "\uFFFD";

    /**
     * What neither HTML nor XML can hold, and marks that turn the direction of writing (Unicode
     * Standard Annex 9, 2.1 to 2.5, from memory): a name must not turn round what follows it.
     */
    private static final Pattern UNPRINTABLE =
            Pattern.compile(
                    "[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F-\\x9F\\uFFFE\\uFFFF\\u061C\\u200E\\u200F"
                            + "\\u202A-\\u202E\\u2066-\\u2069]"
                            + "|[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])"
                            + "|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]");

    private Printable() {}

    /** The text with a sign in the place of each of these. */
    public static String of(String text) {
        return UNPRINTABLE.matcher(text).replaceAll(UNSHOWN);
    }
}
