package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeTableCell;
import javafx.scene.control.TreeTableColumn;
import javafx.scene.control.TreeTableView;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.view.Controls;
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

    private final TreeTableColumn<TreeLine, String> here;
    private final TreeTableColumn<TreeLine, String> there;

    DifferenceTree(Consumer<CandidateFailure> opening) {
        getStyleClass().addAll("dense", "least-high");
        setShowRoot(false);
        setColumnResizePolicy(TreeTableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        TreeTableColumn<TreeLine, String> what = column("What", DifferenceTree::signed, 235);
        here = column("", TreeLine::here, 195);
        there = column("", TreeLine::there, 195);
        getColumns().setAll(List.of(what, here, there));
        Controls.onOpen(this, () -> open(opening));
    }

    /** Names the two columns. */
    void name(String one, String other) {
        Layout.head(here, one);
        Layout.head(there, other);
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
        column.setCellFactory(LineCell::new);
        column.setSortable(false);
        column.setPrefWidth(width);
        return column;
    }

    /** Its words go on in the next line. */
    private static final class LineCell extends TreeTableCell<TreeLine, String> {

        /** Room on both sides of words, and before those of each level of the tree (em). */
        private static final double EDGES = 1.4;

        private static final double INDENT = 1.5;

        private final Text words = new Text();
        private final InvalidationListener wrapping = of -> wrap();

        LineCell(TreeTableColumn<TreeLine, String> column) {
            getStyleClass().add("difference");
            words.getStyleClass().add("cell-words");
            // a cell is measured before it has a width of its own
            column.widthProperty().addListener(new WeakInvalidationListener(wrapping));
            fontProperty().addListener((of, before, now) -> wrap());
        }

        private boolean first() {
            return getTableColumn() == getTreeTableView().getColumns().get(0);
        }

        private void wrap() {
            TreeItem<TreeLine> item = getTableRow() == null ? null : getTableRow().getTreeItem();
            int level = item != null && first() ? getTreeTableView().getTreeItemLevel(item) : 0;
            double edges = (EDGES + INDENT * level) * getFont().getSize();
            words.setWrappingWidth(Math.max(1, getTableColumn().getWidth() - edges));
        }

        @Override
        protected void updateItem(@Nullable String text, boolean empty) {
            super.updateItem(text, empty);
            words.setText(empty || text == null ? "" : text);
            setGraphic(empty ? null : words);
            setAccessibleText(words.getText());
            wrap();
            TreeLine line = empty || getTableRow() == null ? null : getTableRow().getItem();
            pseudoClassStateChanged(FOR, line != null && line.favours() == Favours.FOR && first());
            pseudoClassStateChanged(
                    AGAINST, line != null && line.favours() == Favours.AGAINST && first());
            pseudoClassStateChanged(HEAD, line != null && line.isHead());
        }
    }
}
