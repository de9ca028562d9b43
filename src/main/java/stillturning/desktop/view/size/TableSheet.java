package stillturning.desktop.view.size;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.view.WrappedCell;
import stillturning.report.table.Table;

/** One table with its notes. */
final class TableSheet extends VBox {

    /** Widths of columns, by the letters that they are to hold (em). */
    private static final double LETTER = 0.56;

    private static final double MARGIN = 1.4;
    private static final int LEAST = 6;

    /** Rows of one line; in these no cell can grow. */
    private static final String DENSE = "dense";

    private final TableView<List<String>> table = new TableView<>();
    private final VBox notes = new VBox();
    private final Label letter = Labels.measure();

    TableSheet() {
        getStyleClass().add("sheet");
        table.setId("size-table");
        notes.getStyleClass().add("sentences");
        VBox.setVgrow(table, Priority.ALWAYS);
        getChildren().addAll(table, notes, letter);
    }

    void show(Table<?> now) {
        table.setAccessibleText(now.title());
        table.getStyleClass().remove(DENSE);
        if (IntStream.range(0, now.columns().size()).noneMatch(i -> wraps(now, i))) {
            table.getStyleClass().add(DENSE);
        }
        table.getColumns().clear();
        for (int i = 0; i < now.columns().size(); i++) {
            table.getColumns().add(column(now, i));
        }
        table.getItems().setAll(now.cells());
        table.scrollTo(0);
        if (!table.getStyleClass().contains(DENSE)) {
            // rows are measured before columns have their width, and not again by themselves
            Platform.runLater(table::refresh);
        }
        notes.getChildren().setAll(now.notes().stream().map(TableSheet::note).toList());
    }

    private static Label note(String words) {
        Label note = new Label(words);
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        note.getStyleClass().addAll("text-small", "text-muted");
        return note;
    }

    private TableColumn<List<String>, String> column(Table<?> of, int index) {
        TableColumn<List<String>, String> column = new TableColumn<>();
        Layout.head(column, of.heads().get(index));
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(row.getValue().get(index)));
        if (of.columns().get(index).isNumber()) {
            column.getStyleClass().add("number-column");
            column.setComparator(Numbers::compare);
        }
        if (wraps(of, index)) {
            column.setCellFactory(cells -> new WrappedCell<>());
        }
        Layout.broad(column, letter, letters(of, index) * LETTER + MARGIN);
        return column;
    }

    private static boolean wraps(Table<?> of, int index) {
        return longest(of, index) > letters(of, index);
    }

    private static int longest(Table<?> of, int index) {
        return of.cells().stream().mapToInt(row -> row.get(index).length()).max().orElse(LEAST);
    }

    private static int letters(Table<?> of, int index) {
        int word =
                Pattern.compile(" ")
                        .splitAsStream(of.heads().get(index))
                        .mapToInt(String::length)
                        .max()
                        .orElse(0);
        return Math.max(
                Math.max(LEAST, word + 1),
                Math.min(longest(of, index), of.columns().get(index).widest() + LEAST));
    }
}
