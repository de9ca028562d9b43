package stillturning.desktop.view.draw;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Controls;
import stillturning.desktop.view.ItemCell;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
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
        Controls.field(search, "palette-search", "Search", "Search what can be added");
        search.textProperty().addListener((of, before, now) -> fill());
        search.setOnAction(event -> list.getItems().stream().findFirst().ifPresent(board::add));
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
        list.setPlaceholder(
                Labels.empty("Nothing of that name. Try \u201cbus\u201d or \u201cfuse\u201d."));
        list.setCellFactory(view -> new EntryCell());
        Controls.onEnter(list, board::add);
        Label how = Labels.remark("Enter, double click, or drag onto the paper.");
        getChildren().addAll(Labels.title("Add"), search, Layout.high(list), how);
        fill();
    }

    private void fill() {
        list.getItems().setAll(board.palette(search.getText()));
    }

    private final class EntryCell extends ItemCell<PaletteEntry> {
        private final Label words = Labels.of("");

        EntryCell() {
            Controls.onDoubleClick(this, () -> entry().ifPresent(board::add));
            setOnDragDetected(
                    event -> {
                        entry().ifPresent(this::carry);
                        event.consume();
                    });
        }

        private Optional<PaletteEntry> entry() {
            return Optional.ofNullable(getItem());
        }

        private void carry(PaletteEntry entry) {
            ClipboardContent content = new ClipboardContent();
            content.putString(entry.carried());
            startDragAndDrop(TransferMode.COPY).setContent(content);
        }

        @Override
        protected void show(PaletteEntry entry) {
            words.setText(entry.name());
            setGraphic(words);
            setAccessibleText(entry.name() + ". " + entry.words());
            setTooltip(new Tooltip(entry.words() + "\n" + String.join("\n", entry.values())));
        }
    }
}
