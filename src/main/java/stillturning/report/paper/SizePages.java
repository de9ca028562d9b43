package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.Appraisal;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.report.sizes.FindingWords;
import stillturning.report.sizes.SizeTables;
import stillturning.report.table.Table;
import stillturning.sizing.result.SizingReport;

/** Loads and sizes of the chosen candidate; of the others what is wrong with them, counted. */
final class SizePages {

    private static final Set<String> LOADS =
            Set.of("loads-by-phase", "sources", "all-on", "charge");

    private final Standpoint from;
    private final List<SizingReport> reports;

    SizePages(Standpoint from, List<SizingReport> reports) {
        this.from = from;
        this.reports = reports;
    }

    List<Block> loads() {
        return chosen().map(report -> tables(report, true)).orElse(notAsked());
    }

    List<Block> sizes() {
        return chosen().map(this::sizes).orElse(notAsked());
    }

    private static List<Block> notAsked() {
        return List.of(new Words("Could not be computed, or was not asked for."));
    }

    private Optional<SizingReport> chosen() {
        return from.chosen().flatMap(this::of);
    }

    private Optional<SizingReport> of(Appraisal appraisal) {
        return reports.stream()
                .filter(r -> r.candidate().id().equals(appraisal.candidate().id()))
                .findFirst();
    }

    private PrintedNames labels() {
        return from.labels(from.ranked().get(0));
    }

    private List<Block> sizes(SizingReport report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("What is wrong in \"" + report.candidate().title() + "\""));
        if (report.findings().isEmpty()) {
            blocks.add(new Words("No limit is broken."));
        } else {
            blocks.add(
                    Grid.of(
                            report.findings(),
                            List.of(
                                    words(
                                            "gravity",
                                            8,
                                            f -> FindingWords.gravity(f.rule().gravity())),
                                    words(
                                            "where",
                                            26,
                                            f -> labels().in(FindingWords.about(report, f))),
                                    words(
                                            "what is wrong",
                                            50,
                                            f -> labels().in(FindingWords.wrong(f))),
                                    words(
                                            "what mends it",
                                            30,
                                            f -> labels().in(FindingWords.mend(f))))));
        }
        others(blocks);
        blocks.addAll(tables(report, false));
        return blocks;
    }

    private void others(List<Block> blocks) {
        List<SizingReport> others = reports.stream().skip(1).toList();
        if (!others.isEmpty()) {
            blocks.add(new Heading("Limits broken in the other candidates"));
            blocks.add(
                    new Block.Points(
                            others.stream()
                                    .map(r -> r.candidate().title() + ": " + r.wrong())
                                    .toList()));
        }
    }

    private List<Block> tables(SizingReport report, boolean loads) {
        List<Block> blocks = new ArrayList<>();
        for (Table<?> table : SizeTables.of(report)) {
            if (LOADS.contains(table.name()) == loads && !table.cells().isEmpty()) {
                blocks.add(new Heading(table.title()));
                blocks.add(new Grid(table.said(labels()::in)));
                table.notes().forEach(note -> blocks.add(new Note(note)));
            }
        }
        return blocks;
    }
}
