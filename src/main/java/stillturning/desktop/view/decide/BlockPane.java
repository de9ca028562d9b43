package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
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
import stillturning.report.table.Table;

/** Running text as terminal and paper have it. */
public final class BlockPane extends VBox {

    /** Width of a letter of a table, on the whole (em). */
    private static final double LETTER = 0.55;

    /** The same of a head (em). */
    private static final double BOLD_LETTER = 0.66;

    private static final Pattern SPACE = Pattern.compile("[ \n]");

    private final Label letter = Labels.measure();
    private final UnaryOperator<String> spoken;

    /**
     * @param id by which it is found
     */
    public BlockPane(String id) {
        this(id, UnaryOperator.identity());
    }

    /**
     * @param id by which it is found
     * @param spoken names as a person calls them, in any of the texts
     */
    public BlockPane(String id, UnaryOperator<String> spoken) {
        this.spoken = spoken;
        setId(id);
        getStyleClass().addAll("sentences", "running-text");
        getChildren().add(letter);
    }

    /** Sets the text again. */
    public void show(List<Block> blocks) {
        List<Node> nodes = new ArrayList<>();
        blocks.forEach(block -> nodes.addAll(nodes(block)));
        nodes.add(letter);
        getChildren().setAll(nodes);
    }

    private List<? extends Node> nodes(Block block) {
        if (block instanceof Lead lead) {
            return List.of(wrapped(lead.text(), "lead"));
        } else if (block instanceof Heading heading) {
            return List.of(wrapped(heading.words(), "title-4", "running-head"));
        } else if (block instanceof Words words) {
            return List.of(wrapped(words.text()));
        } else if (block instanceof Note note) {
            return List.of(Labels.remark(spoken.apply(note.text())));
        } else if (block instanceof Points points) {
            return points(points.points());
        } else if (block instanceof Boxes boxes) {
            return points(boxes.steps());
        } else if (block instanceof Facts facts) {
            return points(facts.facts().stream().map(f -> f.label() + ": " + f.value()).toList());
        } else if (block instanceof Lines lines) {
            return List.of(
                    Layout.sideways(Labels.of(spoken(lines.lines()), "monospaced", "text-small")));
        } else if (block instanceof Warning warning) {
            List<Node> nodes = new ArrayList<>(points(warning.points()));
            nodes.add(0, wrapped(warning.heading(), "running-head", "danger"));
            return nodes;
        } else if (block instanceof Grid grid) {
            return List.of(Layout.sideways(table(grid.table())));
        } else if (block instanceof Drawing || block instanceof Lineup || block instanceof Blanks) {
            return List.of(Labels.remark("Shown on the page and in the document."));
        }
        throw new IllegalArgumentException("a screen does not set " + block);
    }

    private List<Label> points(List<String> points) {
        return points.stream().map(point -> wrapped(point, "running-point")).toList();
    }

    private Label wrapped(String words, String... styles) {
        return Labels.wrapped(spoken.apply(words), styles);
    }

    private String spoken(List<String> lines) {
        return lines.stream().map(spoken).collect(Collectors.joining("\n"));
    }

    private GridPane table(Table<?> of) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("running-table");
        List<List<String>> cells = of.cells();
        for (int column = 0; column < of.columns().size(); column++) {
            int at = column;
            boolean number = of.columns().get(column).isNumber();
            double head = longestWord(Stream.of(of.heads().get(at))) * BOLD_LETTER;
            double cell = longestWord(cells.stream().map(row -> row.get(at))) * LETTER;
            ColumnConstraints width = Layout.growing();
            Layout.broad(width.minWidthProperty(), letter, Math.max(head, cell));
            double widest = of.columns().get(column).widest() * LETTER;
            Layout.broad(width.prefWidthProperty(), letter, widest);
            width.setHalignment(number ? HPos.RIGHT : HPos.LEFT);
            grid.getColumnConstraints().add(width);
            grid.add(Labels.wrapped(of.heads().get(column), "text-small", "text-bold"), column, 0);
            for (int row = 0; row < cells.size(); row++) {
                grid.add(wrapped(cells.get(row).get(at), "text-small"), column, row + 1);
            }
        }
        return grid;
    }

    private static int longestWord(Stream<String> texts) {
        return texts.flatMap(SPACE::splitAsStream).mapToInt(String::length).max().orElse(1);
    }
}
