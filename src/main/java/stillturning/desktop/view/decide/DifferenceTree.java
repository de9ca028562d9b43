package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeTableCell;
import javafx.scene.control.TreeTableColumn;
import javafx.scene.control.TreeTableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.decide.DifferenceRow;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Group;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Tells;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Told;

/** In what candidates differ, by group; Enter or a double click opens the story of a failure. */
final class DifferenceTree extends TreeTableView<DifferenceTree.Line> {

    private static final PseudoClass FOR = PseudoClass.getPseudoClass("for");
    private static final PseudoClass AGAINST = PseudoClass.getPseudoClass("against");
    private static final PseudoClass HEAD = PseudoClass.getPseudoClass("head");

    /** A difference, or what stands above several. */
    record Line(
            String what,
            String here,
            String there,
            Tells tells,
            Optional<Told> story,
            boolean isHead) {

        static Line of(DifferenceRow row) {
            return new Line(row.what(), row.here(), row.there(), row.tells(), row.story(), false);
        }

        static Line head(String words, String here, String there) {
            return new Line(words, here, there, Tells.NEITHER, Optional.empty(), true);
        }
    }

    private final TreeTableColumn<Line, String> here;
    private final TreeTableColumn<Line, String> there;

    DifferenceTree(Consumer<Told> opening) {
        getStyleClass().add("dense");
        setShowRoot(false);
        setColumnResizePolicy(TreeTableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        TreeTableColumn<Line, String> what = column("What", DifferenceTree::signed, 300);
        here = column("", Line::here, 170);
        there = column("", Line::there, 150);
        getColumns().add(what);
        getColumns().add(here);
        getColumns().add(there);
        setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        open(opening);
                    }
                });
        setOnMouseClicked(
                event -> {
                    if (event.getClickCount() == 2) {
                        open(opening);
                    }
                });
    }

    /** Names the two columns. */
    void name(String one, String other) {
        here.setText(one);
        there.setText(other);
    }

    /** The chosen line in full, since columns cut long ones. */
    Label inFull() {
        Label words = new Label();
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.textProperty()
                .bind(getSelectionModel().selectedItemProperty().map(this::words).orElse(""));
        words.managedProperty().bind(words.textProperty().isNotEmpty());
        return words;
    }

    private String words(TreeItem<Line> item) {
        Line line = item.getValue();
        if (line.isHead()) {
            String counts = line.here().isEmpty() ? "" : ": failures " + line.here();
            return line.what() + counts + (line.there().isEmpty() ? "" : "; " + line.there());
        }
        String one = line.here().isEmpty() ? "\u2013" : line.here();
        String other = line.there().isEmpty() ? "\u2013" : line.there();
        return signed(line)
                + ".  "
                + here.getText()
                + ": "
                + one
                + ".  "
                + there.getText()
                + ": "
                + other
                + ".";
    }

    /** Words that stand where there is nothing to list. */
    void placeholder(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("empty-words");
        label.setWrapText(true);
        setPlaceholder(label);
    }

    /** Shows differences below a head for each group. */
    void show(List<DifferenceRow> rows) {
        TreeItem<Line> root = new TreeItem<>();
        root.getChildren().setAll(grouped(rows, true));
        setRoot(root);
    }

    /** The differences by group. */
    static List<TreeItem<Line>> grouped(List<DifferenceRow> rows, boolean expanded) {
        List<TreeItem<Line>> groups = new ArrayList<>();
        for (Group group : Group.values()) {
            List<DifferenceRow> own = rows.stream().filter(r -> r.group() == group).toList();
            if (!own.isEmpty()) {
                String words = group.words() + " (" + own.size() + ")";
                TreeItem<Line> head = new TreeItem<>(Line.head(words, "", ""));
                own.forEach(r -> head.getChildren().add(new TreeItem<>(Line.of(r))));
                head.setExpanded(expanded);
                groups.add(head);
            }
        }
        return groups;
    }

    private static String signed(Line line) {
        return line.tells().sign().isEmpty()
                ? line.what()
                : line.tells().sign() + " " + line.what();
    }

    private void open(Consumer<Told> opening) {
        TreeItem<Line> item = getSelectionModel().getSelectedItem();
        if (item != null) {
            item.getValue().story().ifPresent(opening);
        }
    }

    private static TreeTableColumn<Line, String> column(
            String head, Function<Line, String> words, double width) {
        TreeTableColumn<Line, String> column = new TreeTableColumn<>(head);
        column.setCellValueFactory(
                line -> new ReadOnlyStringWrapper(words.apply(line.getValue().getValue())));
        column.setCellFactory(c -> new LineCell());
        column.setSortable(false);
        column.setPrefWidth(width);
        return column;
    }

    private static final class LineCell extends TreeTableCell<Line, String> {

        LineCell() {
            getStyleClass().add("difference");
        }

        @Override
        protected void updateItem(@Nullable String words, boolean empty) {
            super.updateItem(words, empty);
            setText(empty ? null : words);
            Line line = empty || getTableRow() == null ? null : getTableRow().getItem();
            boolean first = getTableColumn() == getTreeTableView().getColumns().get(0);
            pseudoClassStateChanged(FOR, line != null && line.tells() == Tells.FOR && first);
            pseudoClassStateChanged(
                    AGAINST, line != null && line.tells() == Tells.AGAINST && first);
            pseudoClassStateChanged(HEAD, line != null && line.isHead());
        }
    }
}
