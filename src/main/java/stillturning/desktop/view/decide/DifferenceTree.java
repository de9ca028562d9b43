package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeTableCell;
import javafx.scene.control.TreeTableColumn;
import javafx.scene.control.TreeTableView;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.decide.DifferenceRow;
import stillturning.desktop.viewmodel.decide.DifferenceRow.CandidateFailure;
import stillturning.desktop.viewmodel.decide.DifferenceRow.DifferenceGroup;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Favours;

/** In what candidates differ, by group; Enter or a double click opens the story of a failure. */
final class DifferenceTree extends TreeTableView<DifferenceTree.TreeLine> {

    private static final PseudoClass FOR = PseudoClass.getPseudoClass("for");
    private static final PseudoClass AGAINST = PseudoClass.getPseudoClass("against");
    private static final PseudoClass HEAD = PseudoClass.getPseudoClass("head");

    /** A difference, or what stands above several. */
    record TreeLine(
            String what,
            String here,
            String there,
            Favours favours,
            Optional<CandidateFailure> story,
            boolean isHead) {

        static TreeLine of(DifferenceRow row) {
            return new TreeLine(
                    row.what(), row.here(), row.there(), row.favours(), row.story(), false);
        }

        static TreeLine head(String words, String here, String there) {
            return new TreeLine(words, here, there, Favours.NEITHER, Optional.empty(), true);
        }
    }

    private String hereName = "";
    private String thereName = "";
    private final TreeTableColumn<TreeLine, String> here;
    private final TreeTableColumn<TreeLine, String> there;

    DifferenceTree(Consumer<CandidateFailure> opening) {
        getStyleClass().addAll("dense", "least-high");
        setShowRoot(false);
        setColumnResizePolicy(TreeTableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        TreeTableColumn<TreeLine, String> what = column("What", DifferenceTree::signed, 300);
        here = column("", TreeLine::here, 170);
        there = column("", TreeLine::there, 150);
        getColumns().setAll(List.of(what, here, there));
        Controls.onOpen(this, () -> open(opening));
    }

    /** Names the two columns. */
    void name(String one, String other) {
        hereName = one;
        thereName = other;
        Layout.head(here, one);
        Layout.head(there, other);
    }

    /** The chosen line in full, since columns cut long ones. */
    Label inFull() {
        Label words =
                Labels.wrapped(
                        getSelectionModel().selectedItemProperty().map(this::words).orElse(""));
        words.managedProperty().bind(words.textProperty().isNotEmpty());
        return words;
    }

    private String words(TreeItem<TreeLine> item) {
        TreeLine line = item.getValue();
        if (line.isHead()) {
            String counts = line.here().isEmpty() ? "" : ": failures " + line.here();
            return line.what() + counts + (line.there().isEmpty() ? "" : "; " + line.there());
        }
        return signed(line)
                + ".  "
                + words(hereName, line.here())
                + ".  "
                + words(thereName, line.there())
                + ".";
    }

    private static String words(String column, String cell) {
        return column + ": " + (cell.isEmpty() ? "\u2013" : cell);
    }

    /** Shows differences below a head for each group. */
    void show(List<DifferenceRow> rows) {
        TreeItem<TreeLine> root = new TreeItem<>();
        root.getChildren().setAll(grouped(rows, true));
        setRoot(root);
    }

    /** The differences by group. */
    static List<TreeItem<TreeLine>> grouped(List<DifferenceRow> rows, boolean expanded) {
        List<TreeItem<TreeLine>> groups = new ArrayList<>();
        for (DifferenceGroup group : DifferenceGroup.values()) {
            List<DifferenceRow> own = rows.stream().filter(r -> r.group() == group).toList();
            if (!own.isEmpty()) {
                String words = group.words() + " (" + own.size() + ")";
                TreeItem<TreeLine> head = new TreeItem<>(TreeLine.head(words, "", ""));
                own.forEach(r -> head.getChildren().add(new TreeItem<>(TreeLine.of(r))));
                head.setExpanded(expanded);
                groups.add(head);
            }
        }
        return groups;
    }

    private static String signed(TreeLine line) {
        return line.favours().sign().isEmpty()
                ? line.what()
                : line.favours().sign() + " " + line.what();
    }

    private void open(Consumer<CandidateFailure> opening) {
        TreeItem<TreeLine> item = getSelectionModel().getSelectedItem();
        if (item != null) {
            item.getValue().story().ifPresent(opening);
        }
    }

    private static TreeTableColumn<TreeLine, String> column(
            String head, Function<TreeLine, String> words, double width) {
        TreeTableColumn<TreeLine, String> column = new TreeTableColumn<>(head);
        column.setCellValueFactory(
                line -> new ReadOnlyStringWrapper(words.apply(line.getValue().getValue())));
        column.setCellFactory(c -> new LineCell());
        column.setSortable(false);
        column.setPrefWidth(width);
        return column;
    }

    private static final class LineCell extends TreeTableCell<TreeLine, String> {

        LineCell() {
            getStyleClass().add("difference");
        }

        @Override
        protected void updateItem(@Nullable String words, boolean empty) {
            super.updateItem(words, empty);
            setText(empty ? null : words);
            setTooltip(empty || words == null || words.isEmpty() ? null : new Tooltip(words));
            TreeLine line = empty || getTableRow() == null ? null : getTableRow().getItem();
            boolean first = getTableColumn() == getTreeTableView().getColumns().get(0);
            pseudoClassStateChanged(FOR, line != null && line.favours() == Favours.FOR && first);
            pseudoClassStateChanged(
                    AGAINST, line != null && line.favours() == Favours.AGAINST && first);
            pseudoClassStateChanged(HEAD, line != null && line.isHead());
        }
    }
}
