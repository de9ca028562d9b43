package stillturning.desktop.view;

import javafx.scene.control.TableCell;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * A cell of a table whose words go on in the next line.
 *
 * @param <R> what a row is about
 */
public final class WrappedCell<R> extends TableCell<R, String> {

    /** Room on both sides of the words. */
    private static final double EDGES = 16;

    private final Text words = new Text();

    public WrappedCell() {
        words.getStyleClass().add("cell-words");
        words.wrappingWidthProperty().bind(widthProperty().subtract(EDGES));
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
