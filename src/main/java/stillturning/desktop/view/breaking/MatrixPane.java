package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TablePosition;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.desktop.view.Chooser;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.Showing;
import stillturning.desktop.viewmodel.breaking.FailureMatrix;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Grouping;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.MatrixLine;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Order;
import stillturning.report.OutcomeMark;

/** The matrix of all failures by candidate; a cell opens its story. */
final class MatrixPane extends VBox {

    private static final double NAME_EMS = 19.5;
    private static final double CELL_EMS = 9.7;

    private final FailureMatrix matrix;
    private final TableView<MatrixLine> table = new TableView<>();
    private final Label count = new Label();
    private final Chooser<Optional<Outcome>> outcome;
    private final Chooser<Optional<String>> kind;
    private final Chooser<Optional<String>> orderedBy;

    MatrixPane(FailureMatrix matrix) {
        this.matrix = matrix;
        getStyleClass().add("area-pane");
        outcome =
                new Chooser<>(
                        "Only failures that come to",
                        o -> o.map(Outcome::words).orElse("any outcome"),
                        matrix.arrangement().outcome()::set);
        kind =
                new Chooser<>(
                        "Only failures of",
                        k -> k.orElse("any kind of part"),
                        matrix.arrangement().kind()::set);
        orderedBy =
                new Chooser<>(
                        "Whose worst comes first",
                        c -> c.map(matrix::title).orElse("the first"),
                        matrix.arrangement().orderedBy()::set);
        Showing.whileTrue(orderedBy, matrix.arrangement().order().isEqualTo(Order.CANDIDATE));
        table.setId("failure-matrix");
        table.getStyleClass().add("least-high");
        table.setAccessibleText("Failures by candidate; Enter opens the story of a cell");
        table.getSelectionModel().setCellSelectionEnabled(true);
        table.setItems(matrix.lines());
        table.setPlaceholder(Labels.empty("No failure fits, or none has been played yet."));
        table.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        getChildren().addAll(filters(), Layout.high(table), legend());
        matrix.lines().addListener((ListChangeListener<MatrixLine>) change -> refresh());
        refresh();
    }

    private FlowPane filters() {
        TextField search = new TextField();
        Controls.field(search, "matrix-search", "Find a failure", "Find failures by a few words");
        search.textProperty().bindBidirectional(matrix.arrangement().search());
        Chooser<Grouping> grouping =
                new Chooser<>("Grouped by", Grouping::words, matrix.arrangement().grouping()::set);
        grouping.offer(List.of(Grouping.values()), matrix.arrangement().grouping().get());
        Chooser<Order> order =
                new Chooser<>("Order", Order::words, matrix.arrangement().order()::set);
        order.offer(List.of(Order.values()), matrix.arrangement().order().get());
        outcome.offer(
                Stream.concat(
                                Stream.of(Optional.<Outcome>empty()),
                                Stream.of(Outcome.values()).map(Optional::of))
                        .toList(),
                matrix.arrangement().outcome().get());
        CheckBox differing = new CheckBox("differences only");
        differing.selectedProperty().bindBidirectional(matrix.arrangement().differingOnly());
        FlowPane bar =
                new FlowPane(
                        search,
                        outcome,
                        kind,
                        differing,
                        Layout.named("grouped by", grouping),
                        Layout.named("order", order),
                        orderedBy,
                        count);
        bar.getStyleClass().add("picked-bar");
        return bar;
    }

    private static FlowPane legend() {
        FlowPane legend = new FlowPane();
        legend.getStyleClass().add("picked-bar");
        for (OutcomeMark mark : OutcomeMark.values()) {
            String full = mark.outcome().words();
            String words =
                    mark.sign() + " " + mark.word() + (full.equals(mark.word()) ? "" : ": " + full);
            legend.getChildren().add(Labels.of(words, style(mark)));
        }
        return legend;
    }

    private void refresh() {
        count.setText(matrix.count());
        List<Optional<String>> kinds = new ArrayList<>(List.of(Optional.empty()));
        matrix.kinds().forEach(k -> kinds.add(Optional.of(k)));
        kind.offer(kinds, matrix.arrangement().kind().get());
        List<Optional<String>> ids = matrix.candidates().stream().map(Optional::of).toList();
        orderedBy.offer(
                ids,
                matrix.arrangement()
                        .orderedBy()
                        .get()
                        .or(() -> matrix.candidates().stream().findFirst()));
        if (table.getColumns().size() != matrix.candidates().size() + 1
                || !headings().equals(matrix.candidates())) {
            makeColumns();
        }
    }

    private List<String> headings() {
        return table.getColumns().stream().skip(1).map(TableColumn::getId).toList();
    }

    private void makeColumns() {
        TableColumn<MatrixLine, String> name = column("Failure", NAME_EMS, matrix::words);
        name.setCellFactory(of -> new NameCell());
        table.getColumns().clear();
        table.getColumns().add(name);
        for (int i = 0; i < matrix.candidates().size(); i++) {
            int candidate = i;
            String id = matrix.candidates().get(i);
            TableColumn<MatrixLine, Optional<Verdict>> column =
                    column("", CELL_EMS, line -> verdict(line, candidate));
            column.setId(id);
            Layout.head(column, matrix.title(id));
            column.setCellFactory(of -> new OutcomeCell(candidate));
            table.getColumns().add(column);
        }
    }

    private <T> TableColumn<MatrixLine, T> column(
            String head, double ems, Function<MatrixLine, T> value) {
        TableColumn<MatrixLine, T> column = new TableColumn<>(head);
        column.setSortable(false);
        column.setReorderable(false);
        Layout.broad(column, count, ems);
        column.setCellValueFactory(
                line -> new ReadOnlyObjectWrapper<>(value.apply(line.getValue())));
        return column;
    }

    private static Optional<Verdict> verdict(MatrixLine line, int candidate) {
        return line.row().flatMap(row -> row.byCandidate().get(candidate));
    }

    private static String style(OutcomeMark mark) {
        return "outcome-" + mark.name().toLowerCase(Locale.ROOT);
    }

    private void press(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            @SuppressWarnings("rawtypes") // the table hands out positions without their types
            List<TablePosition> chosen = table.getSelectionModel().getSelectedCells();
            chosen.stream().findFirst().ifPresent(at -> open(at.getRow(), at.getColumn() - 1));
            event.consume();
        }
    }

    private void open(int line, int candidate) {
        if (candidate >= 0) {
            table.getItems().get(line).row().ifPresent(row -> matrix.open(row, candidate));
        }
    }

    private static final class NameCell extends TableCell<MatrixLine, String> {
        @Override
        protected void updateItem(@Nullable String words, boolean empty) {
            super.updateItem(words, empty);
            setText(empty || words == null ? "" : words);
            MatrixLine line = empty ? null : getTableRow().getItem();
            getStyleClass().remove("list-heading");
            if (line != null && line.row().isEmpty()) {
                getStyleClass().add("list-heading");
            }
        }
    }

    private final class OutcomeCell extends TableCell<MatrixLine, Optional<Verdict>> {
        private final int candidate;

        OutcomeCell(int candidate) {
            this.candidate = candidate;
            addEventHandler(
                    MouseEvent.MOUSE_CLICKED,
                    event -> {
                        if (!isEmpty() && event.getClickCount() == 2) {
                            open(getIndex(), this.candidate);
                        }
                    });
        }

        @Override
        @SuppressWarnings("NullableOptional") // that is how cells of a table are emptied
        protected void updateItem(@Nullable Optional<Verdict> verdict, boolean empty) {
            super.updateItem(verdict, empty);
            getStyleClass().removeIf(s -> s.startsWith("outcome-"));
            setText("");
            setAccessibleText("");
            if (!empty && verdict != null && verdict.isPresent()) {
                OutcomeMark mark = OutcomeMark.of(verdict.get().outcome());
                boolean untold = verdict.get().untold().isPresent();
                setText(mark.sign() + " " + mark.word() + (untold ? OutcomeMark.UNTOLD : ""));
                setAccessibleText(
                        matrix.title(matrix.candidates().get(candidate))
                                + ": "
                                + mark.outcome().words()
                                + (untold ? ", because it cannot be computed" : ""));
                getStyleClass().add(style(mark));
            } else if (!empty
                    && getTableRow().getItem() != null
                    && getTableRow().getItem().row().isPresent()) {
                setAccessibleText(
                        matrix.title(matrix.candidates().get(candidate)) + ": has no such part");
            }
        }
    }
}
