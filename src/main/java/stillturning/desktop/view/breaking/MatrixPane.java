package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.desktop.viewmodel.breaking.FailureMatrix;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Grouping;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Line;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Order;
import stillturning.report.OutcomeMark;

/** The matrix of all failures by candidate; a cell opens its story. */
final class MatrixPane extends VBox {

    private static final double NAME_EMS = 21;
    private static final double CELL_EMS = 10;

    private final FailureMatrix matrix;
    private final TableView<Line> table = new TableView<>();
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
                        matrix.outcome()::set);
        kind =
                new Chooser<>(
                        "Only failures of", k -> k.orElse("any kind of part"), matrix.kind()::set);
        orderedBy =
                new Chooser<>(
                        "Whose worst comes first",
                        c -> c.orElse("the first"),
                        matrix.orderedBy()::set);
        orderedBy.visibleProperty().bind(matrix.order().isEqualTo(Order.CANDIDATE));
        orderedBy.managedProperty().bind(orderedBy.visibleProperty());
        table.setId("failure-matrix");
        table.setAccessibleText("Failures by candidate; Enter opens the story of a cell");
        table.getSelectionModel().setCellSelectionEnabled(true);
        table.setItems(matrix.lines());
        Label none = new Label("No failure fits, or none has been played yet.");
        none.getStyleClass().add("empty-words");
        table.setPlaceholder(none);
        table.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        VBox.setVgrow(table, Priority.ALWAYS);
        getChildren().addAll(filters(), table, legend());
        matrix.lines().addListener((ListChangeListener<Line>) change -> refresh());
        refresh();
    }

    private FlowPane filters() {
        TextField search = new TextField();
        search.setId("matrix-search");
        search.setPromptText("Find a failure");
        search.setAccessibleText("Find failures by a few words");
        search.textProperty().bindBidirectional(matrix.search());
        Chooser<Grouping> grouping =
                new Chooser<>("Grouped by", Grouping::words, matrix.grouping()::set);
        grouping.offer(List.of(Grouping.values()), matrix.grouping().get());
        Chooser<Order> order = new Chooser<>("Order", Order::words, matrix.order()::set);
        order.offer(List.of(Order.values()), matrix.order().get());
        outcome.offer(
                Stream.concat(
                                Stream.of(Optional.<Outcome>empty()),
                                Stream.of(Outcome.values()).map(Optional::of))
                        .toList(),
                matrix.outcome().get());
        CheckBox differing = new CheckBox("differences only");
        differing.selectedProperty().bindBidirectional(matrix.differingOnly());
        FlowPane bar =
                new FlowPane(
                        search,
                        outcome,
                        kind,
                        differing,
                        named("grouped by", grouping),
                        named("order", order),
                        orderedBy,
                        count);
        bar.getStyleClass().add("picked-bar");
        return bar;
    }

    private static HBox named(String words, Chooser<?> chooser) {
        HBox box = new HBox(new Label(words), chooser);
        box.getStyleClass().addAll("in-line", "named");
        return box;
    }

    private static FlowPane legend() {
        FlowPane legend = new FlowPane();
        legend.getStyleClass().add("picked-bar");
        for (OutcomeMark mark : OutcomeMark.values()) {
            Label label = new Label(mark.sign() + " " + mark.outcome().words());
            label.getStyleClass().add(style(mark));
            legend.getChildren().add(label);
        }
        return legend;
    }

    private void refresh() {
        count.setText(matrix.count());
        List<Optional<String>> kinds = new ArrayList<>(List.of(Optional.empty()));
        matrix.kinds().forEach(k -> kinds.add(Optional.of(k)));
        kind.offer(kinds, matrix.kind().get());
        List<Optional<String>> ids = matrix.candidates().stream().map(Optional::of).toList();
        orderedBy.offer(
                ids, matrix.orderedBy().get().or(() -> matrix.candidates().stream().findFirst()));
        if (table.getColumns().size() != matrix.candidates().size() + 1
                || !headings().equals(matrix.candidates())) {
            makeColumns();
        }
    }

    private List<String> headings() {
        return table.getColumns().stream().skip(1).map(TableColumn::getId).toList();
    }

    private void makeColumns() {
        table.getColumns().clear();
        TableColumn<Line, String> name = new TableColumn<>("Failure");
        name.setSortable(false);
        name.setReorderable(false);
        name.setPrefWidth(NAME_EMS * em());
        name.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(words(row.getValue())));
        name.setCellFactory(of -> new NameCell());
        table.getColumns().add(name);
        for (int i = 0; i < matrix.candidates().size(); i++) {
            int candidate = i;
            String id = matrix.candidates().get(i);
            Label heading = new Label(id);
            heading.setWrapText(true);
            heading.setMinHeight(USE_PREF_SIZE);
            heading.setPrefWidth(CELL_EMS * em());
            TableColumn<Line, Optional<Verdict>> column = new TableColumn<>();
            column.setId(id);
            column.setGraphic(heading);
            column.setSortable(false);
            column.setReorderable(false);
            column.setPrefWidth(CELL_EMS * em());
            column.setCellValueFactory(
                    row -> new ReadOnlyObjectWrapper<>(verdict(row.getValue(), candidate)));
            column.setCellFactory(of -> new OutcomeCell(candidate));
            table.getColumns().add(column);
        }
    }

    private double em() {
        return count.getFont().getSize();
    }

    private static String words(Line line) {
        if (line instanceof Line.Failing failing) {
            return failing.row().failure();
        }
        Line.Heading heading = (Line.Heading) line;
        return heading.words() + " (" + heading.rows() + ")";
    }

    private static Optional<Verdict> verdict(Line line, int candidate) {
        return line instanceof Line.Failing failing
                ? failing.row().byCandidate().get(candidate)
                : Optional.empty();
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

    private void open(int row, int candidate) {
        if (candidate >= 0 && table.getItems().get(row) instanceof Line.Failing failing) {
            matrix.open(failing.row(), candidate);
        }
    }

    private static final class NameCell extends TableCell<Line, String> {
        @Override
        protected void updateItem(@Nullable String words, boolean empty) {
            super.updateItem(words, empty);
            setText(empty || words == null ? "" : words);
            boolean heading = !empty && getTableRow().getItem() instanceof Line.Heading;
            getStyleClass().remove("list-heading");
            if (heading) {
                getStyleClass().add("list-heading");
            }
        }
    }

    private final class OutcomeCell extends TableCell<Line, Optional<Verdict>> {
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
                setText(mark.sign() + " " + mark.word());
                setAccessibleText(
                        matrix.candidates().get(candidate) + ": " + mark.outcome().words());
                getStyleClass().add(style(mark));
            } else if (!empty && getTableRow().getItem() instanceof Line.Failing) {
                setAccessibleText(matrix.candidates().get(candidate) + ": has no such part");
            }
        }
    }
}
