package stillturning.desktop.view;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.StackPane;

/** Panes one beside the other where there is room for all, else one at a time, each under a tab. */
public final class Folded extends StackPane {

    private final List<FoldedPane> leaves;
    private final double leastEms;
    private final SplitPane open = new SplitPane();
    private final TabPane folded = new TabPane();
    private final Label letter = Labels.measure();
    private final double[] shares;

    /** A pane, and the words on its tab. */
    public record FoldedPane(String words, Node pane) {}

    /**
     * @param along the direction in which they lie one beside the other
     * @param leastEms room below which they are folded, in heights of a letter
     * @param shares where the borders between them are at first, each from 0 to 1
     */
    public Folded(Orientation along, double leastEms, double[] shares, List<FoldedPane> leaves) {
        this.leaves = List.copyOf(leaves);
        this.leastEms = leastEms;
        this.shares = shares.clone();
        open.setOrientation(along);
        for (FoldedPane leaf : leaves) {
            folded.getTabs().add(Layout.tab(leaf.words, null));
        }
        getChildren().add(letter);
        setMinSize(0, 0);
        unfold();
        letter.fontProperty().addListener((of, before, now) -> fit());
        (along == Orientation.HORIZONTAL ? widthProperty() : heightProperty())
                .addListener((of, before, now) -> fit());
    }

    /** Gives one of the panes no more room when there is more. */
    public Folded keeping(int leaf) {
        SplitPane.setResizableWithParent(leaves.get(leaf).pane, false);
        return this;
    }

    /** Names its tabs, for those who look for them. */
    public Folded named(String id) {
        folded.setId(id);
        return this;
    }

    /** Whether there is room for one pane only. */
    public boolean isFolded() {
        return getChildren().contains(folded);
    }

    /** Brings a pane to the front, where only one is to be seen. */
    public void front(int leaf) {
        folded.getSelectionModel().select(leaf);
    }

    private void fit() {
        double room = open.getOrientation() == Orientation.HORIZONTAL ? getWidth() : getHeight();
        boolean fold = room > 0 && room < leastEms * letter.getFont().getSize();
        if (fold && !isFolded()) {
            fold();
        } else if (!fold && isFolded()) {
            unfold();
        }
    }

    private void fold() {
        open.getItems().clear();
        for (int i = 0; i < leaves.size(); i++) {
            folded.getTabs().get(i).setContent(leaves.get(i).pane);
        }
        getChildren().setAll(letter, folded);
    }

    private void unfold() {
        for (Tab tab : folded.getTabs()) {
            tab.setContent(null);
        }
        open.getItems().setAll(leaves.stream().map(FoldedPane::pane).toList());
        open.setDividerPositions(shares);
        getChildren().setAll(letter, open);
    }
}
