package stillturning.report.page;

import java.util.List;

/** The sizes of every candidate: what is wrong with them, and the tables to build from. */
public record SizeSection(List<Sheet> sheets) {

    /** One candidate. */
    public record Sheet(String title, List<Found> findings, List<Table> tables) {
        public Sheet {
            findings = List.copyOf(findings);
            tables = List.copyOf(tables);
        }
    }

    /** Something that is not as it should be, and its style class. */
    public record Found(String gravity, String style, String about, String wrong, String mend) {}

    /** A table with its notes. */
    public record Table(
            String title, List<Column> columns, List<List<String>> rows, List<String> notes) {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            notes = List.copyOf(notes);
        }
    }

    /** Head of a column, and its style class. */
    public record Column(String words, String style) {}

    public SizeSection {
        sheets = List.copyOf(sheets);
    }
}
