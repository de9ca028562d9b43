package stillturning.report.sizes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.quantity.UnitSystem;
import stillturning.sizing.SizeFinding;
import stillturning.sizing.SizingReport;

/** The tables of several candidates as files for a spreadsheet: one file a table. */
public final class SizeFiles {

    private SizeFiles() {}

    /** Text of each file by its name, in metres and kilograms. */
    public static Map<String, String> of(List<SizingReport> reports) {
        return of(reports, UnitSystem.METRIC);
    }

    /** Text of each file by its name. */
    public static Map<String, String> of(List<SizingReport> reports, UnitSystem system) {
        Map<String, SizeTable> all = new LinkedHashMap<>();
        for (SizingReport report : reports) {
            List<SizeTable> tables = new ArrayList<>();
            tables.add(findings(report, system));
            tables.addAll(SizeTables.of(report, system));
            tables.addAll(SizeTables.lists(report, system));
            for (SizeTable table : tables) {
                all.merge(
                        table.name(),
                        table.byCandidate().with(report.candidate().id(), table),
                        (above, below) -> above.with(report.candidate().id(), table));
            }
        }
        Map<String, String> files = new LinkedHashMap<>();
        all.forEach((name, table) -> files.put(name + ".csv", Csv.of(table)));
        return files;
    }

    private static SizeTable findings(SizingReport report, UnitSystem system) {
        List<List<String>> rows = new ArrayList<>();
        for (SizeFinding f : report.findings()) {
            rows.add(
                    List.of(
                            FindingWords.gravity(f.rule().gravity()),
                            FindingWords.about(report, f, system),
                            FindingWords.wrong(f),
                            FindingWords.mend(f)));
        }
        return new SizeTable(
                "findings",
                "Findings",
                List.of(
                        SizeTable.Head.words("gravity", 8),
                        SizeTable.Head.words("part", 24),
                        SizeTable.Head.words("what is wrong", 50),
                        SizeTable.Head.words("what mends it", 30)),
                rows,
                List.of());
    }
}
