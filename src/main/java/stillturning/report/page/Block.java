package stillturning.report.page;

import java.util.List;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

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
    record Grid(Table<?> table) implements Block {

        /** The columns of some rows. */
        public static <R> Grid of(List<R> rows, List<Column<R>> columns) {
            return new Grid(new Table<>(columns, rows));
        }
    }

    /** Lines that keep their shape. */
    record Lines(List<String> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
