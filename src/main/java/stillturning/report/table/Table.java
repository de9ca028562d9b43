package stillturning.report.table;

import java.util.ArrayList;
import java.util.List;
import stillturning.quantity.UnitSystem;

/**
 * Rows, and the columns that are read from them.
 *
 * @param name name of its file, without ending
 * @param notes how it is to be read
 */
public record Table<R>(
        String name,
        String title,
        List<Column<R>> columns,
        List<R> rows,
        List<String> notes,
        UnitSystem system) {

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** A table without name, title and notes. */
    public Table(List<Column<R>> columns, List<R> rows) {
        this("", "", columns, rows, List.of(), UnitSystem.METRIC);
    }

    /** Heads of its columns, with their units. */
    public List<String> heads() {
        return columns.stream().map(c -> c.head(system)).toList();
    }

    /** Share of the width that a column of a table of prose takes (%). */
    public int share(int column) {
        int all = columns.stream().mapToInt(Column::widest).sum();
        return Math.max(1, 100 * columns.get(column).widest() / all);
    }

    /** Cells of its rows, and what stands below them. */
    public List<List<String>> cells() {
        List<List<String>> cells = new ArrayList<>();
        rows.forEach(row -> cells.add(columns.stream().map(c -> c.text(row, system)).toList()));
        if (columns.stream().anyMatch(c -> !c.foot().isEmpty())) {
            cells.add(columns.stream().map(Column::foot).toList());
        }
        return cells;
    }
}
