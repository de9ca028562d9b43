package stillturning.desktop.view;

import javafx.scene.Node;
import javafx.scene.control.ListCell;
import org.jspecify.annotations.Nullable;

/**
 * A cell of a list that is as wide as the list, as high as its words then are, and empty while it
 * has no item.
 */
public abstract class ItemCell<T> extends ListCell<T> {

    /** What a list's frame and its scroll bar take of its width (pixels). */
    private static final double FRAME = 12;

    /** Height of a line of words (pixels), nearly. */
    private static final double LINE = 20;

    protected ItemCell() {
        setPrefWidth(0);
        // else words wrapped at the width of nothing make it as high as a page
        setMinHeight(USE_PREF_SIZE);
    }

    /** Shows an item. */
    protected abstract void show(T item);

    /** Shows nothing. */
    protected void clear() {
        setText(null);
        setGraphic(null);
        setAccessibleText(null);
        setTooltip(null);
    }

    @Override
    protected final void updateItem(@Nullable T item, boolean empty) {
        super.updateItem(item, empty);
        if (empty || item == null) {
            clear();
        } else {
            show(item);
        }
    }

    /**
     * The list remembers heights, so those that nobody can know yet are guesses: words stay in one
     * line while the list has no width, and no cell is without height while it is off the screen.
     */
    @Override
    protected double computePrefHeight(double width) {
        if (getSkin() == null) {
            return LINE;
        }
        Node row = getGraphic();
        if (row == null) {
            return super.computePrefHeight(width);
        }
        double whole = getListView() == null ? 0 : getListView().getWidth() - FRAME;
        double room = whole - snappedLeftInset() - snappedRightInset();
        double height = row.prefHeight(room > 0 ? room : USE_COMPUTED_SIZE);
        return snappedTopInset() + height + snappedBottomInset();
    }
}
