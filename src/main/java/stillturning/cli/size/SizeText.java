package stillturning.cli.size;

import java.util.List;
import java.util.Optional;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.files.PartPlace;
import stillturning.files.ReadStudy;
import stillturning.quantity.Formats;
import stillturning.report.TerminalColour.Ink;
import stillturning.report.TextTable;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
import stillturning.report.sizes.FindingWords;
import stillturning.report.sizes.SizeTable;
import stillturning.sizing.Rule;
import stillturning.sizing.SizeFinding;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WeightSheet;

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
        return FindingWords.about(report, f)
                + place
                + ": "
                + FindingWords.wrong(f)
                + ". Mend: "
                + FindingWords.mend(f);
    }

    /** Each finding that breaks a limit, in words. */
    public List<String> wrong(SizingReport report) {
        return report.findings().stream()
                .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
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
    public void tables(List<SizeTable> tables) {
        for (SizeTable table : tables) {
            if (table.rows().isEmpty()) {
                continue;
            }
            TextTable text =
                    new TextTable(
                            table.heads().stream()
                                    .map(
                                            h ->
                                                    h.number()
                                                            ? Column.numbers(h.words(), h.widest())
                                                            : Column.words(h.words(), h.widest()))
                                    .toList());
            table.rows().forEach(row -> text.row(row.stream().map(Cell::new).toList()));
            out.section(table.title()).lines(text.lines(out.paint()));
            table.notes().forEach(note -> out.line(Paragraph.of("", note)));
        }
    }

    /** Weights and findings of several candidates side by side. */
    public void comparison(List<SizingReport> reports) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("candidate", 40),
                                Column.numbers("limits broken", 7),
                                Column.numbers("worth a look", 6),
                                Column.numbers("weight (kg)", 8),
                                Column.numbers("more than lightest (kg)", 12),
                                Column.numbers("moment (kg m)", 9),
                                Column.numbers("centre (m)", 8)));
        double lightest =
                reports.stream()
                        .mapToDouble(r -> r.purchase().weight().kilograms())
                        .min()
                        .orElse(0);
        for (SizingReport report : reports) {
            WeightSheet weight = report.purchase().weight();
            long looks =
                    report.findings().stream()
                            .filter(f -> f.rule().gravity() == Rule.Gravity.LOOK)
                            .count();
            double placed = weight.kilograms() - weight.withoutArmKilograms();
            table.row(
                    List.of(
                            new Cell(report.candidate().title(), Ink.STRONG),
                            new Cell(
                                    String.valueOf(report.wrong()),
                                    report.wrong() > 0 ? Ink.ALARM : Ink.GOOD),
                            new Cell(String.valueOf(looks)),
                            new Cell(Formats.fixed(weight.kilograms(), 2)),
                            new Cell(Formats.fixed(weight.kilograms() - lightest, 2)),
                            new Cell(
                                    placed > 0
                                            ? Formats.fixed(weight.momentKilogramMetres(), 2)
                                            : "-"),
                            new Cell(
                                    placed > 0
                                            ? Formats.fixed(
                                                    weight.momentKilogramMetres() / placed, 2)
                                            : "-")));
        }
        out.section("Side by side").lines(table.lines(out.paint()));
    }
}
