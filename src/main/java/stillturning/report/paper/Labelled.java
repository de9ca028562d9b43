package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lines;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Page.Fact;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** A block with labels in the place of names. */
final class Labelled {

    private Labelled() {}

    static Block of(Block block, PrintedNames labels) {
        if (block instanceof Words words) {
            return new Words(labels.in(words.text()));
        } else if (block instanceof Points points) {
            return new Points(points.points().stream().map(labels::in).toList());
        } else if (block instanceof Grid grid) {
            return new Grid(of(grid.table(), labels));
        } else if (block instanceof Lines lines) {
            return new Lines(lines.lines().stream().map(labels::in).toList());
        } else if (block instanceof Heading heading) {
            return new Heading(labels.in(heading.words()));
        } else if (block instanceof Note note) {
            return new Note(labels.in(note.text()));
        } else if (block instanceof Block.Facts facts) {
            return new Block.Facts(
                    facts.facts().stream()
                            .map(f -> new Fact(f.label(), labels.in(f.value())))
                            .toList());
        } else if (block instanceof Block.Boxes boxes) {
            return new Block.Boxes(boxes.steps().stream().map(labels::in).toList());
        } else if (block instanceof Block.Warning warning) {
            return new Block.Warning(
                    warning.heading(), warning.points().stream().map(labels::in).toList());
        } else if (block instanceof Block.Lead lead) {
            return new Block.Lead(labels.in(lead.text()));
        } else if (block instanceof Block.Drawing
                || block instanceof Block.Lineup
                || block instanceof Block.Blanks) {
            return block;
        }
        throw new IllegalArgumentException("no labels for " + block);
    }

    /** The table as text: the same heads, labels in its cells. */
    static Table<List<String>> of(Table<?> table, PrintedNames labels) {
        List<Column<List<String>>> columns = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            int at = i;
            String head = table.heads().get(i);
            int widest = table.columns().get(i).widest();
            columns.add(
                    table.columns().get(i).isNumber()
                            ? Column.figures(head, widest, row -> row.get(at))
                            : Column.words(head, widest, row -> row.get(at)));
        }
        List<List<String>> rows =
                table.cells().stream()
                        .map(
                                row ->
                                        IntStream.range(0, row.size())
                                                .mapToObj(
                                                        i ->
                                                                table.columns().get(i).isNumber()
                                                                        ? row.get(i)
                                                                        : labels.in(row.get(i)))
                                                .toList())
                        .toList();
        return new Table<>(
                table.name(), table.title(), columns, rows, table.notes(), table.system());
    }
}
