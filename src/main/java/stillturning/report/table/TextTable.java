package stillturning.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.report.table.TerminalColour.Ink;

/**
 * A table for a terminal: columns aligned by spaces, cells broken between words where a column is
 * narrower than its text.
 */
public final class TextTable {

    private static final String GAP = "  ";

    /** Where long words in the heads of numbers are broken, so that the table stays narrow. */
    private static final Map<String, String> BREAKS =
            Map.of("alternators", "alter- nators", "interrupt", "inter- rupt");

    private final List<Line> lines = new ArrayList<>();
    private final List<Boolean> atRight = new ArrayList<>();

    /** Cells of one row, each broken into lines no wider than its column may be. */
    private record Line(List<List<String>> cells, List<Ink> inks) {}

    private <R> TextTable(Table<R> table) {
        List<Column<R>> columns = table.columns();
        columns.forEach(c -> atRight.add(c.isNumber()));
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            heads.add(hyphenated(table.heads().get(i), columns.get(i)));
        }
        List<Ink> strong = columns.stream().map(c -> Ink.STRONG).toList();
        lines.add(line(heads, columns, strong));
        List<List<String>> cells = table.cells();
        for (int i = 0; i < cells.size(); i++) {
            List<String> above = i == 0 ? List.of() : cells.get(i - 1);
            lines.add(line(shown(cells.get(i), above, columns), columns, inks(table, i)));
        }
    }

    private static <R> List<String> shown(
            List<String> cells, List<String> above, List<Column<R>> columns) {
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            boolean same = !above.isEmpty() && cells.get(i).equals(above.get(i));
            shown.add(same && !columns.get(i).repeats() ? "" : cells.get(i));
        }
        return shown;
    }

    private static <R> List<Ink> inks(Table<R> table, int row) {
        return table.columns().stream()
                .map(
                        c ->
                                row < table.rows().size()
                                        ? c.ink().apply(table.rows().get(row))
                                        : Ink.PLAIN)
                .toList();
    }

    /** Only where the word is wider than its column. */
    private static <R> String hyphenated(String head, Column<R> column) {
        String broken = head;
        if (column.isNumber()) {
            for (Map.Entry<String, String> word : BREAKS.entrySet()) {
                if (word.getKey().length() > column.widest()) {
                    broken = broken.replace(word.getKey(), word.getValue());
                }
            }
        }
        return broken;
    }

    private static <R> Line line(List<String> cells, List<Column<R>> columns, List<Ink> inks) {
        List<List<String>> broken = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            broken.add(broken(cells.get(i), columns.get(i).widest()));
        }
        return new Line(broken, inks);
    }

    /** The lines of a table, heads first; none ends in a space. */
    public static List<String> lines(Table<?> table, TerminalColour paint) {
        return new TextTable(table).lines(paint);
    }

    private List<String> lines(TerminalColour paint) {
        int[] widths = new int[atRight.size()];
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = lines.stream().mapToInt(l -> longest(l.cells.get(column))).max().orElse(1);
        }
        List<String> text = new ArrayList<>();
        add(lines.get(0), widths, paint, text);
        List<String> rule = new ArrayList<>();
        for (int width : widths) {
            rule.add("-".repeat(width));
        }
        text.add(String.join(GAP, rule));
        lines.subList(1, lines.size()).forEach(line -> add(line, widths, paint, text));
        return List.copyOf(text);
    }

    private void add(Line line, int[] widths, TerminalColour paint, List<String> text) {
        int height = line.cells.stream().mapToInt(List::size).max().orElse(1);
        for (int i = 0; i < height; i++) {
            StringBuilder row = new StringBuilder();
            for (int c = 0; c < widths.length; c++) {
                List<String> cell = line.cells.get(c);
                String words = i < cell.size() ? cell.get(i) : "";
                String space = " ".repeat(widths[c] - length(words));
                String inked = paint.on(words, line.inks.get(c));
                row.append(c == 0 ? "" : GAP)
                        .append(atRight.get(c) ? space + inked : inked + space);
            }
            text.add(row.toString().stripTrailing());
        }
    }

    /** Breaks a text between words, and inside a word that is longer than a line. */
    public static List<String> broken(String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (length(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            String rest = word;
            while (length(rest) > width) {
                int end = rest.offsetByCodePoints(0, width);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line = rest;
        }
        lines.add(line);
        return lines;
    }

    private static int longest(List<String> lines) {
        return Math.max(1, lines.stream().mapToInt(TextTable::length).max().orElse(1));
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
