package stillturning.desktop.view.draw;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.draw.Board;
import stillturning.desktop.viewmodel.draw.PaletteEntry;

/** What can be added: by Enter, by a double click, or dragged onto the paper. */
final class PalettePane extends VBox {

    private final Board board;
    private final TextField search = new TextField();
    private final ListView<PaletteEntry> list = new ListView<>();

    PalettePane(Board board) {
        this.board = board;
        getStyleClass().add("draw-palette");
        search.setId("palette-search");
        search.setPromptText("Search");
        search.setAccessibleText("Search what can be added");
        search.textProperty().addListener((of, before, now) -> fill());
        search.setOnAction(event -> add(list.getItems().stream().findFirst().orElse(null)));
        search.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.DOWN) {
                        list.requestFocus();
                        list.getSelectionModel().selectFirst();
                    }
                });
        list.setId("palette");
        list.setAccessibleText("What can be added; Enter adds it");
        list.getStyleClass().add("dense");
        Label nothing = new Label("Nothing of that name. Try \u201cbus\u201d or \u201cfuse\u201d.");
        nothing.setWrapText(true);
        nothing.getStyleClass().add("empty-words");
        list.setPlaceholder(nothing);
        list.setCellFactory(view -> new Cell());
        list.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        add(list.getSelectionModel().getSelectedItem());
                    }
                });
        VBox.setVgrow(list, Priority.ALWAYS);
        Label head = new Label("Add");
        head.getStyleClass().add("title-4");
        Label how = new Label("Enter, double click, or drag onto the paper.");
        how.setWrapText(true);
        how.getStyleClass().addAll("text-small", "text-muted");
        getChildren().addAll(head, search, list, how);
        fill();
    }

    private void fill() {
        list.getItems().setAll(board.palette(search.getText()));
    }

    private void add(@Nullable PaletteEntry entry) {
        if (entry != null) {
            board.add(entry);
        }
    }

    private final class Cell extends ListCell<PaletteEntry> {
        Cell() {
            setPrefWidth(0);
            setOnMouseClicked(
                    event -> {
                        if (event.getClickCount() == 2) {
                            add(getItem());
                        }
                    });
            setOnDragDetected(
                    event -> {
                        if (getItem() != null) {
                            ClipboardContent content = new ClipboardContent();
                            content.putString(getItem().carried());
                            startDragAndDrop(TransferMode.COPY).setContent(content);
                            event.consume();
                        }
                    });
        }

        @Override
        protected void updateItem(@Nullable PaletteEntry entry, boolean empty) {
            super.updateItem(entry, empty);
            if (empty || entry == null) {
                setText(null);
                setAccessibleText(null);
                setTooltip(null);
                return;
            }
            setText(entry.name());
            setAccessibleText(entry.name() + ". " + entry.words());
            setTooltip(new Tooltip(entry.words() + "\n" + String.join("\n", entry.values())));
        }
    }
}
