package stillturning.desktop.view;

import javafx.scene.Node;
import javafx.scene.control.ListCell;
import org.jspecify.annotations.Nullable;

/**
 * A cell of a list that is as wide as the list, as high as its words then are, and empty while it
 * has no item.
 */
public abstract class ItemCell<T> extends ListCell<T> {

    private static final double SCROLL_BAR = 16;

    private static final double EDGES = 20;

    protected ItemCell() {
        setPrefWidth(0);
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

    @Override
    protected double computePrefHeight(double width) {
        double room = getListView() == null ? 0 : getListView().getWidth() - SCROLL_BAR - EDGES;
        Node row = getGraphic();
        return row == null || room <= 0
                ? super.computePrefHeight(width)
                : snappedTopInset() + row.prefHeight(room) + snappedBottomInset();
    }
}
