package stillturning.desktop.view;

import java.util.Optional;
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
        // the column's width, since a row is measured before its cells have theirs
        tableColumnProperty()
                .addListener(
                        (of, before, now) ->
                                Optional.ofNullable(now)
                                        .ifPresent(
                                                column ->
                                                        words.wrappingWidthProperty()
                                                                .bind(
                                                                        column.widthProperty()
                                                                                .subtract(EDGES))));
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
