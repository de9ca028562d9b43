package stillturning.report.page;

import java.util.List;

/** A piece of running text, for the page and for the terminal alike. */
public sealed interface Block {

    /** A heading inside a sheet. */
    record Heading(String words) implements Block {}

    /** A paragraph. */
    record Words(String text) implements Block {}

    /** A paragraph that explains what stands above it. */
    record Note(String text) implements Block {}

    /** A list. */
    record Points(List<String> points) implements Block {
        public Points {
            points = List.copyOf(points);
        }
    }

    /** A table. */
    record Grid(List<Column> columns, List<List<String>> rows) implements Block {
        public Grid {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            int wanted = columns.size();
            rows.forEach(
                    row -> {
                        if (row.size() != wanted) {
                            throw new IllegalArgumentException(
                                    row + " does not fill " + wanted + " columns");
                        }
                    });
        }
    }

    /**
     * A column of a table.
     *
     * @param widest characters at most on a terminal
     * @param style class on the page, empty for words
     */
    record Column(String head, int widest, String style) {
        /** A column of words. */
        public static Column words(String head, int widest) {
            return new Column(head, widest, "");
        }

        /** A column of numbers. */
        public static Column numbers(String head, int widest) {
            return new Column(head, widest, "num");
        }
    }

    /** Lines that keep their shape. */
    record Lines(List<String> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
