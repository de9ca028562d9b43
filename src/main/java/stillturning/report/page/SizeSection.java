package stillturning.report.page;

import java.util.List;
import java.util.Optional;
import stillturning.report.table.Table;

/** The sizes of every candidate: what is wrong with them, and the tables to build from. */
public record SizeSection(List<SizeSheet> sheets) {

    /**
     * One candidate.
     *
     * @param sleeves labels for its wires, of the chosen one
     */
    public record SizeSheet(
            String title,
            List<SizeIssue> findings,
            List<Table<?>> tables,
            Optional<Sleeves> sleeves) {
        public SizeSheet {
            findings = List.copyOf(findings);
            tables = List.copyOf(tables);
        }
    }

    /** Something that is not as it should be, and its style class. */
    public record SizeIssue(
            String gravity, String style, String about, String wrong, String mend) {}

    public SizeSection {
        sheets = List.copyOf(sheets);
    }
}
