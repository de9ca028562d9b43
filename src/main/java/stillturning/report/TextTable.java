package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.TerminalColour.Ink;

/**
 * A table for a terminal: columns aligned by spaces, cells broken between words where a column is
 * narrower than its text.
 */
public final class TextTable {

    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<List<Cell>> rows = new ArrayList<>();

    /** Which edge of its column a cell keeps to. */
    public enum Align {
        LEFT,
        RIGHT
    }

    /**
     * A column.
     *
     * @param widest characters at most, at least 1; longer cells are broken
     */
    public record Column(String head, Align align, int widest) {
        public Column {
            if (widest < 1) {
                throw new IllegalArgumentException(
                        "column " + head + ": " + widest + " characters are no room");
            }
        }

        /** A column of words. */
        public static Column words(String head, int widest) {
            return new Column(head, Align.LEFT, widest);
        }

        /** A column of numbers. */
        public static Column numbers(String head, int widest) {
            return new Column(head, Align.RIGHT, widest);
        }
    }

    /** A cell and its ink. */
    public record Cell(String text, Ink ink) {
        /** A cell in plain ink. */
        public Cell(String text) {
            this(text, Ink.PLAIN);
        }
    }

    /** A table without rows. */
    public TextTable(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    /**
     * Adds a row below the others.
     *
     * @throws IllegalArgumentException if there are not as many cells as columns
     */
    public TextTable row(List<Cell> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(
                    cells.size() + " cells do not fill " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    /** The lines of the table, heads first; none ends in a space. */
    public List<String> lines(TerminalColour paint) {
        int[] widths = widths();
        List<String> lines = new ArrayList<>();
        List<Cell> heads = columns.stream().map(c -> new Cell(c.head(), Ink.STRONG)).toList();
        addRow(heads, widths, paint, lines);
        StringBuilder rule = new StringBuilder();
        for (int width : widths) {
            rule.append(rule.length() == 0 ? "" : GAP).append("-".repeat(width));
        }
        lines.add(rule.toString());
        rows.forEach(row -> addRow(row, widths, paint, lines));
        return List.copyOf(lines);
    }

    private int[] widths() {
        int[] widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            int widest = columns.get(i).widest();
            int head = longest(broken(columns.get(i).head(), widest));
            int cells =
                    rows.stream()
                            .mapToInt(row -> longest(broken(row.get(column).text(), widest)))
                            .max()
                            .orElse(0);
            widths[i] = Math.max(1, Math.max(head, cells));
        }
        return widths;
    }

    private void addRow(List<Cell> row, int[] widths, TerminalColour paint, List<String> lines) {
        List<List<String>> broken = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            broken.add(broken(row.get(i).text(), widths[i]));
        }
        int height = broken.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < height; line++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String words = line < broken.get(i).size() ? broken.get(i).get(line) : "";
                String space = " ".repeat(widths[i] - length(words));
                String inked = paint.on(words, row.get(i).ink());
                boolean left = columns.get(i).align() == Align.LEFT;
                text.append(i == 0 ? "" : GAP).append(left ? inked + space : space + inked);
            }
            lines.add(text.toString().stripTrailing());
        }
    }

    /** Breaks a text between words, and inside a word that is longer than a line. */
    static List<String> broken(String text, int width) {
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
        return lines.stream().mapToInt(TextTable::length).max().orElse(0);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
