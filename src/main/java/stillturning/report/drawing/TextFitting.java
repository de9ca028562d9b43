package stillturning.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Brings texts to the room that there is for them. */
public final class TextFitting {
    private static final String CUT = "…";

    private TextFitting() {}

    /** The texts that are not empty, joined. */
    public static String joined(String between, String... texts) {
        return Stream.of(texts).filter(t -> !t.isBlank()).collect(Collectors.joining(between));
    }

    /** The text, or as much of its beginning as fits with an ellipsis. */
    public static String fitted(String text, double size, boolean bold, double width) {
        if (TextWidths.of(text, size, bold) <= width) {
            return text;
        }
        int[] points = text.codePoints().toArray();
        int keep = points.length;
        while (keep > 0 && TextWidths.of(cut(points, keep), size, bold) > width) {
            keep--;
        }
        return cut(points, keep);
    }

    private static String cut(int[] points, int keep) {
        return new String(points, 0, keep).stripTrailing() + CUT;
    }

    /**
     * The text in at most so many lines, broken between words; the last is cut where it must be.
     */
    public static List<String> wrapped(
            String text, double size, boolean bold, double width, int lines) {
        List<String> done = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = joined(" ", line, word);
            boolean fits = TextWidths.of(longer, size, bold) <= width;
            if (fits || line.isEmpty() || done.size() == lines - 1) {
                line = longer;
            } else {
                done.add(fitted(line, size, bold, width));
                line = word;
            }
        }
        if (!line.isEmpty()) {
            done.add(fitted(line, size, bold, width));
        }
        return List.copyOf(done);
    }
}
