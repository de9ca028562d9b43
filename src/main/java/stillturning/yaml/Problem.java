package stillturning.yaml;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;

/**
 * One mistake in a file, with its place and its remedy; ordered by file, line and column.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 * @param path place inside the document, such as {@code parts.bus-feed.gauge}; empty for the whole
 *     document
 * @param wrong what is wrong
 * @param right what would be right
 */
public record Problem(Path file, int line, int column, String path, String wrong, String right)
        implements Comparable<Problem> {

    private static final Comparator<Problem> ORDER =
            Comparator.comparing((Problem p) -> p.file.toString())
                    .thenComparingInt(Problem::line)
                    .thenComparingInt(Problem::column)
                    .thenComparing(Problem::path)
                    .thenComparing(Problem::wrong);

    private static final int WIDEST_EXCERPT = 100;

    // escape sequences in a file must not reach the reader's terminal
    public Problem {
        path = visible(path);
        wrong = visible(wrong);
        right = visible(right);
    }

    /**
     * {@code two-battery.yaml:14:12: parts.bus-feed.gauge: "AWG 99" is no wire gauge; write AWG
     * 22}.
     */
    @Override
    public String toString() {
        String place = path.isEmpty() ? "" : path + ": ";
        return file.getFileName() + ":" + line + ":" + column + ": " + place + wrong + "; " + right;
    }

    /** The message, the line of the text that it is about, and a caret under the place. */
    public String shownIn(String text) {
        String source = visible(lineOf(text));
        int[] points = source.codePoints().toArray();
        int caret = Math.min(column - 1, points.length);
        int from = caret < WIDEST_EXCERPT ? 0 : caret - WIDEST_EXCERPT / 2;
        int to = Math.min(points.length, from + WIDEST_EXCERPT);
        return this
                + "\n    "
                + new String(points, from, to - from)
                + "\n    "
                + " ".repeat(caret - from)
                + "^";
    }

    private String lineOf(String text) {
        String[] lines = text.split("\r\n|\r|\n", line + 1);
        return line <= lines.length ? lines[line - 1] : "";
    }

    private static String visible(String text) {
        if (text.codePoints().noneMatch(Invisible::changesWhatIsShown)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(c -> shown.append(visible(c)));
        return shown.toString();
    }

    private static String visible(int codePoint) {
        if (codePoint == '\t') {
            return " ";
        }
        return Invisible.changesWhatIsShown(codePoint)
                ? String.format(Locale.ROOT, "\\u%04x", codePoint)
                : Character.toString(codePoint);
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }
}
