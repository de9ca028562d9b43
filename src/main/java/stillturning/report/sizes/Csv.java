package stillturning.report.sizes;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Tables as comma-separated values: lines end in CR LF, cells with a comma, a quote or a line break
 * are quoted, quotes doubled.
 *
 * @see "RFC 4180, section 2, from memory"
 */
public final class Csv {

    private static final String LINE_END = "\r\n";

    private Csv() {}

    /** The table, heads first. */
    public static String of(SizeTable table) {
        StringBuilder text = new StringBuilder();
        text.append(line(table.heads().stream().map(SizeTable.Head::words).toList()));
        table.rows().forEach(row -> text.append(line(row)));
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",")) + LINE_END;
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
