package stillturning.desktop.view.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.decide.Deciding;
import stillturning.desktop.viewmodel.decide.DifferenceRow.Told;
import stillturning.desktop.viewmodel.decide.RequirementTable;
import stillturning.desktop.viewmodel.decide.RequirementTable.Cell;

/** Each requirement against each candidate, and the failures that break it. */
final class RequirementsPane extends VBox {

    private static final PseudoClass MISSED = PseudoClass.getPseudoClass("missed");

    /** Share of the width for the titles of candidates, and what the frame takes of it. */
    private static final double NAME = 0.31;

    private static final double MARGIN = 6;

    /** A candidate with a cell for each requirement. */
    private record Line(String title, List<Cell> cells) {}

    private final Deciding deciding;
    private final TableView<Line> table = new TableView<>();
    private final Label reason = new Label();
    private final ListView<String> failures = new ListView<>();
    private Optional<Cell> chosen = Optional.empty();

    RequirementsPane(Deciding deciding) {
        this.deciding = deciding;
        getStyleClass().add("area-pane");
        table.setId("requirements");
        table.setAccessibleText("Requirements by candidate");
        table.getSelectionModel().setCellSelectionEnabled(true);
        table.getSelectionModel().getSelectedCells().addListener((Observable cells) -> choose());
        table.setPlaceholder(
                words(
                        "The study asks for nothing yet. Write requirements: into the study, such"
                                + " as endurance-without-charging: 30 min, and every candidate is"
                                + " held against them here."));
        VBox.setVgrow(table, Priority.ALWAYS);
        reason.setWrapText(true);
        reason.setMinHeight(Region.USE_PREF_SIZE);
        failures.setId("breaking-failures");
        failures.setAccessibleText("Failures that break the requirement; Enter opens the story");
        failures.setPlaceholder(words("No failure breaks it."));
        failures.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        open();
                    }
                });
        failures.setOnMouseClicked(
                event -> {
                    if (event.getClickCount() == 2) {
                        open();
                    }
                });
        failures.getStyleClass().addAll("dense", "breaking-failures");
        failures.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().addAll(table, reason, failures);
        deciding.requirements().addListener((value, from, to) -> refill(to));
        refill(deciding.requirements().get());
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("empty-words");
        label.setWrapText(true);
        return label;
    }

    private void refill(RequirementTable now) {
        table.getColumns().clear();
        TableColumn<Line, String> name = new TableColumn<>("Candidate");
        name.setCellValueFactory(line -> new ReadOnlyObjectWrapper<>(line.getValue().title()));
        name.setCellFactory(column -> new WrappedCell<>());
        name.setSortable(false);
        name.prefWidthProperty().bind(table.widthProperty().subtract(MARGIN).multiply(NAME));
        table.getColumns().add(name);
        for (int i = 0; i < now.rows().size(); i++) {
            TableColumn<Line, Cell> column = column(now.rows().get(i).requirement(), i);
            column.prefWidthProperty()
                    .bind(
                            table.widthProperty()
                                    .subtract(MARGIN)
                                    .multiply((1 - NAME) / now.rows().size()));
            table.getColumns().add(column);
        }
        table.getItems().setAll(now.rows().isEmpty() ? List.of() : lines(now));
        chosen = Optional.empty();
        selectFirstMissed();
        tell();
    }

    private static List<Line> lines(RequirementTable now) {
        List<Line> lines = new ArrayList<>();
        for (int k = 0; k < now.candidates().size(); k++) {
            int candidate = k;
            lines.add(
                    new Line(
                            now.candidates().get(k),
                            now.rows().stream().map(r -> r.cells().get(candidate)).toList()));
        }
        return lines;
    }

    private static TableColumn<Line, Cell> column(String requirement, int index) {
        TableColumn<Line, Cell> column = new TableColumn<>();
        Label head = new Label(requirement);
        head.setWrapText(true);
        head.getStyleClass().addAll("wrapped-head", "tall-head");
        head.prefWidthProperty().bind(column.widthProperty().subtract(MARGIN));
        column.setGraphic(head);
        column.getStyleClass().add("narrow-column");
        column.setSortable(false);
        column.setCellValueFactory(
                line -> new ReadOnlyObjectWrapper<>(line.getValue().cells().get(index)));
        column.setCellFactory(c -> new MetCell());
        return column;
    }

    private void selectFirstMissed() {
        for (int row = 0; row < table.getItems().size(); row++) {
            List<Cell> cells = table.getItems().get(row).cells();
            for (int i = 0; i < cells.size(); i++) {
                if (!cells.get(i).met()) {
                    table.getSelectionModel().select(row, table.getColumns().get(i + 1));
                    return;
                }
            }
        }
    }

    private void choose() {
        chosen =
                table.getSelectionModel().getSelectedCells().stream()
                        .findFirst()
                        .filter(at -> at.getRow() >= 0 && at.getColumn() > 0)
                        .map(
                                at ->
                                        table.getItems()
                                                .get(at.getRow())
                                                .cells()
                                                .get(at.getColumn() - 1));
        tell();
    }

    private void tell() {
        reason.setText(chosen.map(RequirementsPane::words).orElse("Choose a cell to read why."));
        failures.getItems().setAll(chosen.map(Cell::failures).orElse(List.of()));
    }

    private static String words(Cell cell) {
        return cell.title()
                + " \u2013 "
                + cell.requirement()
                + ": "
                + cell.word()
                + ", "
                + cell.reason()
                + (cell.failures().isEmpty() ? "." : ". Enter on a failure opens its story.");
    }

    private void open() {
        String failure = failures.getSelectionModel().getSelectedItem();
        if (failure != null) {
            chosen.ifPresent(cell -> deciding.open(new Told(cell.candidate(), failure)));
        }
    }

    /** A verdict by sign and word. */
    private static final class MetCell extends TableCell<Line, Cell> {
        MetCell() {
            getStyleClass().add("met-cell");
        }

        @Override
        protected void updateItem(@Nullable Cell cell, boolean empty) {
            super.updateItem(cell, empty);
            if (empty || cell == null) {
                pseudoClassStateChanged(MISSED, false);
                setText(null);
                setAccessibleText(null);
                return;
            }
            pseudoClassStateChanged(MISSED, !cell.met());
            setText(text(cell));
            setAccessibleText(words(cell));
        }

        private static String text(Cell cell) {
            boolean counted = !cell.met() && !cell.failures().isEmpty();
            return counted ? "\u2716 by " + cell.failures().size() : cell.word();
        }
    }
}
