package stillturning.report.table;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tables as comma-separated values: lines end in CR LF, cells with a comma, a quote or a line break
 * are quoted, quotes doubled. A text that a spreadsheet would run as a formula gets an apostrophe
 * before it, which spreadsheets take as "this is text"; a number keeps its sign.
 *
 * @see "RFC 4180, section 2, from memory"
 */
public final class Csv {

    private static final String LINE_END = "\r\n";
    private static final String STARTS_A_FORMULA = "=+-@";
    private static final Pattern NUMBER_OR_NONE =
            Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?|-");

    private Csv() {}

    /** The table, heads first. */
    public static String of(Table<?> table) {
        return Stream.concat(Stream.of(table.heads()), table.cells().stream())
                .map(Csv::line)
                .collect(Collectors.joining());
    }

    /**
     * Tables of the same columns below each other, each row with its owner before it.
     *
     * @param owner head of the column before the others
     * @param tables by owner, at least one
     */
    public static String of(String owner, Map<String, Table<?>> tables) {
        StringBuilder text = new StringBuilder();
        tables.forEach(
                (name, table) -> {
                    if (text.isEmpty()) {
                        text.append(line(with(owner, table.heads())));
                    }
                    table.cells().forEach(row -> text.append(line(with(name, row))));
                });
        return text.toString();
    }

    private static List<String> with(String first, List<String> others) {
        return Stream.concat(Stream.of(first), others.stream()).toList();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",")) + LINE_END;
    }

    private static String cell(String written) {
        String text = inert(written);
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private static String inert(String text) {
        String start = text.stripLeading();
        boolean command =
                !text.isEmpty()
                        && (Character.isISOControl(text.charAt(0))
                                || (!start.isEmpty()
                                        && STARTS_A_FORMULA.indexOf(start.charAt(0)) >= 0));
        return command && !NUMBER_OR_NONE.matcher(text).matches() ? "'" + text : text;
    }
}
