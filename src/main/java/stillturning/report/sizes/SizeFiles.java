package stillturning.report.sizes;

import static stillturning.report.table.Column.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Csv;
import stillturning.report.table.Table;
import stillturning.sizing.result.SizingReport;

/** The tables of several candidates as files for a spreadsheet: one file a table. */
public final class SizeFiles {

    private SizeFiles() {}

    /** Text of each file by its name, in metres and kilograms. */
    public static Map<String, String> of(List<SizingReport> reports) {
        return of(reports, UnitSystem.METRIC);
    }

    /** Text of each file by its name. */
    public static Map<String, String> of(List<SizingReport> reports, UnitSystem system) {
        Map<String, Map<String, Table<?>>> all = new LinkedHashMap<>();
        for (SizingReport report : reports) {
            Stream.of(
                            List.<Table<?>>of(findings(report, system)),
                            SizeTables.of(report, system),
                            SizeTables.lists(report, system))
                    .flatMap(List::stream)
                    .forEach(
                            table ->
                                    all.computeIfAbsent(table.name(), n -> new LinkedHashMap<>())
                                            .put(report.candidate().id(), table));
        }
        Map<String, String> files = new LinkedHashMap<>();
        all.forEach((name, tables) -> files.put(name + ".csv", Csv.of("candidate", tables)));
        return files;
    }

    private static Table<?> findings(SizingReport report, UnitSystem system) {
        return new SizeTables(system)
                .table(
                        "findings",
                        "Findings",
                        List.of(
                                words("gravity", 8, f -> FindingWords.gravity(f.rule().gravity())),
                                words("part", 24, f -> FindingWords.about(report, f, system)),
                                words("what is wrong", 50, FindingWords::wrong),
                                words("what mends it", 30, FindingWords::mend)),
                        report.findings());
    }
}
