package stillturning.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
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

    /**
     * The table as text: the same heads and figures, other words in its cells.
     *
     * @param words what is said in place of the words of a cell
     */
    public Table<List<String>> said(UnaryOperator<String> words) {
        List<Column<List<String>>> said = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            said.add(columns.get(i).said(heads().get(i), i));
        }
        return new Table<>(
                name,
                title,
                said,
                cells().stream().map(row -> said(row, words)).toList(),
                notes,
                system);
    }

    private List<String> said(List<String> row, UnaryOperator<String> words) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            said.add(columns.get(i).isNumber() ? row.get(i) : words.apply(row.get(i)));
        }
        return said;
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
