package stillturning.cli.size;

import static stillturning.report.table.Column.figures;

import java.util.List;
import java.util.Optional;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.files.ReadStudy;
import stillturning.files.finding.PartPlace;
import stillturning.quantity.Formats;
import stillturning.report.PrintedNames;
import stillturning.report.sizes.FindingWords;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WeightSheet;

/** Sizes for a person: findings first. */
public final class SizeText {

    private final ReadStudy read;
    private final Output out;

    public SizeText(ReadStudy read, Output out) {
        this.read = read;
        this.out = out;
    }

    /** Findings of one candidate. */
    public void findings(SizingReport report) {
        long wrong = report.wrong();
        out.section(report.candidate().title())
                .line(
                        Paragraph.of(
                                "",
                                wrong == 0
                                        ? "No limit is broken."
                                        : wrong
                                                + (wrong == 1
                                                        ? " limit is broken."
                                                        : " limits are broken.")));
        report.findings().forEach(f -> finding(report, f));
        if (!report.untold().isEmpty()) {
            out.line(
                    Paragraph.of(
                            "",
                            report.untold().size()
                                    + " failures could not be computed, and their currents are"
                                    + " missing: "
                                    + String.join("; ", report.untold())));
        }
    }

    private void finding(SizingReport report, SizeFinding f) {
        String gravity = FindingWords.gravity(f.rule().gravity());
        String lead = "  " + gravity + " ".repeat(7 - gravity.length());
        out.line(Paragraph.of(lead, inWords(report, f)));
    }

    private String inWords(SizingReport report, SizeFinding f) {
        String place = place(report.candidate().id(), f).map(p -> " (" + p + ")").orElse("");
        PrintedNames names = new PrintedNames(report.candidate());
        return names.cell(FindingWords.about(report, f))
                + place
                + ": "
                + names.in(FindingWords.wrong(f))
                + ". Mend: "
                + names.in(FindingWords.mend(f));
    }

    /** Each finding that breaks a limit, in words, without those that come before any answer. */
    public List<String> wrong(SizingReport report) {
        return report.findings().stream()
                .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                .filter(f -> f.rule() != Rule.PROTECTS_NOTHING)
                .map(f -> inWords(report, f))
                .toList();
    }

    private Optional<PartPlace> place(String candidate, SizeFinding f) {
        return Optional.ofNullable(read.sizes().places().get(candidate))
                .flatMap(
                        places ->
                                List.of(
                                                f.mend()
                                                        .map(SizeFinding.Mend::part)
                                                        .orElse(f.part()),
                                                f.part())
                                        .stream()
                                        .flatMap(p -> Optional.ofNullable(places.get(p)).stream())
                                        .filter(p -> !p.path().startsWith("loads"))
                                        .findFirst());
    }

    /** The tables of one candidate. */
    public void tables(List<? extends Table<?>> tables) {
        for (Table<?> table : tables) {
            if (table.cells().isEmpty()) {
                continue;
            }
            out.section(table.title()).lines(TextTable.lines(table, out.paint()));
            table.notes().forEach(note -> out.line(Paragraph.of("", note)));
        }
    }

    /** Weights and findings of several candidates side by side. */
    public void comparison(List<SizingReport> reports) {
        double lightest = reports.stream().mapToDouble(r -> weight(r).kilograms()).min().orElse(0);
        List<Column<SizingReport>> columns =
                List.of(
                        Column.<SizingReport>words("candidate", 40, r -> r.candidate().title())
                                .ink(r -> Ink.STRONG),
                        Column.<SizingReport>figures(
                                        "limits broken", 7, r -> String.valueOf(r.wrong()))
                                .ink(r -> r.wrong() > 0 ? Ink.ALARM : Ink.GOOD),
                        figures("worth a look", 6, r -> String.valueOf(looks(r))),
                        figures("weight (kg)", 8, r -> Formats.fixed(weight(r).kilograms(), 2)),
                        figures(
                                "more than lightest (kg)",
                                12,
                                r -> Formats.fixed(weight(r).kilograms() - lightest, 2)),
                        figures("moment (kg m)", 9, r -> placed(r, 1)),
                        figures("centre (m)", 8, r -> placed(r, placedKilograms(r))));
        out.section("Side by side")
                .lines(TextTable.lines(new Table<>(columns, reports), out.paint()));
    }

    private static WeightSheet weight(SizingReport report) {
        return report.purchase().weight();
    }

    private static long looks(SizingReport report) {
        return report.findings().stream()
                .filter(f -> f.rule().gravity() == Rule.Gravity.LOOK)
                .count();
    }

    private static double placedKilograms(SizingReport report) {
        return weight(report).kilograms() - weight(report).withoutArmKilograms();
    }

    /** The moment over something, where anything has an arm. */
    private static String placed(SizingReport report, double over) {
        return placedKilograms(report) > 0
                ? Formats.fixed(weight(report).momentKilogramMetres() / over, 2)
                : "-";
    }
}
