package stillturning.desktop.view.window;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToolBar;

/** Finds what can have the focus and has no name that a screen reader could say. */
final class Unnamed {

    private final List<String> found = new ArrayList<>();
    private final Set<Node> named = new HashSet<>();

    private Unnamed() {}

    /** What has no name below a node; to be used on the screen's thread. */
    static List<String> in(Node root) {
        Unnamed unnamed = new Unnamed();
        unnamed.labels(root);
        unnamed.look(root);
        return unnamed.found;
    }

    private void labels(Node node) {
        if (node instanceof Label label && label.getLabelFor() != null) {
            named.add(label.getLabelFor());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::labels);
        }
    }

    private void look(Node node) {
        if (!node.isVisible()) {
            return;
        }
        boolean inside = node.getParent() instanceof Control && node.getId() == null;
        if (node instanceof Control control
                && control.isFocusTraversable()
                && !isFrame(control)
                && !inside
                && isSilent(control)) {
            found.add("no name: " + control);
        }
        if (node instanceof Parent parent) {
            List.copyOf(parent.getChildrenUnmodifiable()).forEach(this::look);
        }
    }

    /** What only holds others. */
    private static boolean isFrame(Control control) {
        return control instanceof ScrollPane
                || control instanceof SplitPane
                || control instanceof TabPane
                || control instanceof ToolBar;
    }

    private boolean isSilent(Control control) {
        String told = control.getAccessibleText();
        boolean words = control instanceof Labeled labeled && !blank(labeled.getText());
        return blank(told) && !words && !named.contains(control);
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
