package stillturning.yaml;

import java.util.Arrays;

/** From the parser's count of code points to the index of a char in the text. */
final class CharIndex {

    // empty as long as every code point is one char, which is nearly always
    private final int[] starts;

    CharIndex(String text) {
        boolean simple = text.codePointCount(0, text.length()) == text.length();
        starts = simple ? new int[0] : starts(text);
    }

    private static int[] starts(String text) {
        int[] starts = new int[text.length() + 1];
        int points = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            starts[points++] = at;
        }
        starts[points++] = text.length();
        return Arrays.copyOf(starts, points);
    }

    int of(int codePoints) {
        return starts.length == 0 ? codePoints : starts[codePoints];
    }
}
