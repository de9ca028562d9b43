package stillturning.desktop.view;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/** Shows nodes and takes them away, with the room that they have. */
public final class Showing {

    private Showing() {}

    /** Shows a node or takes it away. */
    public static void set(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    /** Shows a node as long as something is so. */
    public static void whileTrue(Node node, ObservableValue<Boolean> condition) {
        node.visibleProperty().bind(condition);
        node.managedProperty().bind(condition);
    }
}
