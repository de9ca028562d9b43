package stillturning.desktop.view;

import javafx.scene.Node;
import javafx.scene.control.ListCell;

/** A cell of a list that is as high as its words are when they are as wide as the list. */
public abstract class WordyCell<T> extends ListCell<T> {

    private static final double SCROLL_BAR = 16;
    private static final double EDGES = 20;

    protected WordyCell() {
        setPrefWidth(0);
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
