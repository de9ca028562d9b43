package stillturning.report.terminal;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Blanks;
import stillturning.report.page.Block.Boxes;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Lines;
import stillturning.report.page.Block.Lineup;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;

/** Running text for a terminal of 100 columns. */
public final class BlockText {

    private static final int WIDTH = 100;
    private static final String INDENT = "  ";
    private static final String BLANK = "_".repeat(40);

    private BlockText() {}

    /** The lines of all blocks, an empty one between two that need it. */
    public static List<String> lines(List<? extends Block> blocks, TerminalColour paint) {
        List<String> lines = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Heading heading) {
                lines.add("");
                lines.add(INDENT + paint.on(heading.words(), Ink.STRONG));
            } else if (block instanceof Words words) {
                lines.addAll(hung(INDENT, words.text()));
            } else if (block instanceof Note note) {
                lines.addAll(hung(INDENT, note.text()));
            } else if (block instanceof Lead lead) {
                lines.addAll(hung(INDENT, lead.text()));
            } else if (block instanceof Points points) {
                lines.addAll(points("- ", points.points()));
            } else if (block instanceof Facts facts) {
                lines.addAll(points("", facts(facts)));
            } else if (block instanceof Warning warning) {
                lines.addAll(hung(INDENT, warning.heading()));
                lines.addAll(points("! ", warning.points()));
            } else if (block instanceof Boxes boxes) {
                lines.addAll(points("[ ] ", boxes.steps()));
            } else if (block instanceof Blanks blanks) {
                blanks.labels().forEach(label -> lines.add(INDENT + label + " " + BLANK));
            } else if (block instanceof Drawing drawing) {
                lines.addAll(hung(INDENT, drawing.picture().title()));
            } else if (block instanceof Lineup lineup) {
                lines.addAll(points("- ", rows(lineup)));
            } else if (block instanceof Grid grid) {
                TextTable.lines(grid.table(), paint).forEach(line -> lines.add(INDENT + line));
            } else if (block instanceof Lines kept) {
                lines.addAll(kept.lines());
            }
        }
        return List.copyOf(lines);
    }

    private static List<String> points(String sign, List<String> points) {
        return points.stream().flatMap(point -> hung(INDENT + sign, point).stream()).toList();
    }

    private static List<String> facts(Facts facts) {
        return facts.facts().stream().map(f -> f.label() + ": " + f.value()).toList();
    }

    private static List<String> rows(Lineup lineup) {
        return lineup.rows().stream().map(row -> String.join("; ", row.cells())).toList();
    }

    private static List<String> hung(String head, String text) {
        List<String> lines = new ArrayList<>();
        for (String piece : TextTable.broken(text, WIDTH - head.length())) {
            lines.add((lines.isEmpty() ? head : " ".repeat(head.length())) + piece);
        }
        return lines;
    }
}
