package stillturning.report.html;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.report.PrintedNames;
import stillturning.report.page.SizeSection;
import stillturning.report.page.SizeSection.SizeIssue;
import stillturning.report.page.SizeSection.SizeSheet;
import stillturning.report.sizes.FindingWords;
import stillturning.report.sizes.SizeTables;
import stillturning.report.sizes.SleeveLabels;
import stillturning.report.table.Table;
import stillturning.sizing.result.Rule.Gravity;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;

/** The part of the page that is about sizes. */
final class SizeSheets {

    private SizeSheets() {}

    static SizeSection of(List<SizingReport> reports) {
        return new SizeSection(
                reports.stream().map(r -> sheet(r, r.equals(reports.get(0)))).toList());
    }

    private static SizeSheet sheet(SizingReport report, boolean chosen) {
        PrintedNames names = new PrintedNames(report.candidate());
        List<Table<?>> tables =
                Stream.concat(
                                SizeTables.of(report).stream(),
                                SizeTables.lists(report).stream()
                                        .filter(t -> !t.name().equals("load-analysis")))
                        .filter(t -> !t.cells().isEmpty())
                        .toList();
        return new SizeSheet(
                report.candidate().title(),
                report.findings().stream().map(f -> found(report, f, names)).toList(),
                SizeTables.spoken(tables, names),
                Optional.of(report).filter(r -> chosen).map(SleeveLabels::of));
    }

    private static SizeIssue found(SizingReport report, SizeFinding f, PrintedNames names) {
        Gravity gravity = f.rule().gravity();
        return new SizeIssue(
                FindingWords.gravity(gravity),
                switch (gravity) {
                    case WRONG -> "o-lost";
                    case LOOK -> "o-act";
                    case NOTE -> "o-none";
                },
                names.in(FindingWords.about(report, f)),
                names.in(FindingWords.wrong(f)),
                names.in(FindingWords.mend(f)));
    }
}
