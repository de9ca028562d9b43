package stillturning.report.paper;

import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lines;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Page.Fact;

/** A block with labels in the place of names. */
final class Labelled {

    private Labelled() {}

    static Block of(Block block, PrintedNames labels) {
        if (block instanceof Words words) {
            return new Words(labels.in(words.text()));
        } else if (block instanceof Points points) {
            return new Points(points.points().stream().map(labels::in).toList());
        } else if (block instanceof Grid grid) {
            return new Grid(grid.table().said(labels::in));
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
}
