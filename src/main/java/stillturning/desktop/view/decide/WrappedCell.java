package stillturning.desktop.view.decide;

import javafx.scene.control.TableCell;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** A cell whose words go on in the next line. */
final class WrappedCell<T> extends TableCell<T, String> {

    private final Text words = new Text();

    WrappedCell() {
        words.getStyleClass().add("cell-words");
        words.wrappingWidthProperty().bind(widthProperty().subtract(16));
        setPrefHeight(Region.USE_COMPUTED_SIZE);
    }

    @Override
    protected void updateItem(@Nullable String text, boolean empty) {
        super.updateItem(text, empty);
        words.setText(text == null ? "" : text);
        setGraphic(empty ? null : words);
        setAccessibleText(text);
    }
}
