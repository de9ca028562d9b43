package stillturning.desktop.view.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Labeled;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import stillturning.desktop.view.picture.PictureView;

/** Finds what nobody can read on a screen: words that end in dots, and what lies out of sight. */
final class Cut {

    /** Borders are rounded to whole pixels. */
    private static final double ROUNDING = 2;

    private final List<String> found = new ArrayList<>();

    private Cut() {}

    /** What is cut below a node, in words; to be used on the screen's thread. */
    static List<String> in(Node root) {
        Cut cut = new Cut();
        cut.look(root);
        return cut.found;
    }

    private void look(Node node) {
        if (!node.isVisible() || node instanceof PictureView) {
            return;
        }
        if (node instanceof Labeled labeled) {
            words(labeled);
        }
        if (node instanceof Labeled || node instanceof TextInputControl) {
            place((Region) node);
        }
        if (node instanceof ScrollPane scroll) {
            breadth(scroll);
        }
        if (node instanceof Parent parent) {
            written(parent);
            List.copyOf(parent.getChildrenUnmodifiable()).forEach(this::look);
        }
    }

    /** Names at the marks of a picture, one written over the other. */
    private void written(Parent picture) {
        List<Node> names =
                picture.getChildrenUnmodifiable().stream()
                        .filter(child -> child.getStyleClass().contains("trade-name"))
                        .filter(Node::isVisible)
                        .toList();
        for (int i = 0; i < names.size(); i++) {
            Bounds one = names.get(i).getBoundsInParent();
            for (Node other : names.subList(i + 1, names.size())) {
                if (covers(one, other.getBoundsInParent())) {
                    found.add(name(names.get(i)) + " is written over" + name(other));
                }
            }
        }
    }

    private static boolean covers(Bounds one, Bounds other) {
        return Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX())
                        > ROUNDING
                && Math.min(one.getMaxY(), other.getMaxY())
                                - Math.max(one.getMinY(), other.getMinY())
                        > ROUNDING;
    }

    private void words(Labeled labeled) {
        String whole = labeled.getText();
        if (whole == null || whole.isBlank() || labeled.getWidth() == 0 || outOfFlow(labeled)) {
            return;
        }
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text text
                    && !text.getText().equals(whole)
                    && text.getText().contains(labeled.getEllipsisString())
                    && !told(labeled, whole)) {
                found.add("\u201C" + whole + "\u201D reads \u201C" + text.getText() + "\u201D");
            }
        }
    }

    /** Whether it is the path of a folder, and the whole of it comes up beside the mouse. */
    private static boolean told(Labeled labeled, String whole) {
        if (labeled.getTextOverrun() == OverrunStyle.ELLIPSIS) {
            return false;
        }
        return Optional.ofNullable(labeled.getTooltip())
                .map(Tooltip::getText)
                .filter(whole::equals)
                .isPresent();
    }

    private static boolean outOfFlow(Node node) {
        return node instanceof IndexedCell<?> cell && cell.isEmpty();
    }

    private void place(Region node) {
        if (node.getWidth() == 0 || node.getHeight() == 0) {
            return;
        }
        Bounds own = node.localToScene(node.getLayoutBounds());
        for (Parent up = node.getParent(); up != null; up = up.getParent()) {
            if (scrolls(up) || (up.getParent() != null && scrolls(up.getParent()))) {
                return;
            }
            if (up instanceof Region around
                    && !inside(own, around.localToScene(around.getLayoutBounds()))) {
                found.add(
                        name(node)
                                + " at "
                                + shape(own)
                                + " lies outside of "
                                + name(around)
                                + " at "
                                + shape(around.localToScene(around.getLayoutBounds())));
                return;
            }
        }
    }

    private static boolean scrolls(Parent node) {
        return node instanceof ScrollPane
                || node instanceof VirtualFlow
                || node instanceof TextInputControl
                || node.getStyleClass().contains("viewport")
                || node.getStyleClass().contains("clipped-container")
                || node.getStyleClass().contains("virtual-flow")
                || node.getStyleClass().contains("column-header-background");
    }

    private static boolean inside(Bounds inner, Bounds outer) {
        return inner.getMinX() >= outer.getMinX() - ROUNDING
                && inner.getMaxX() <= outer.getMaxX() + ROUNDING
                && inner.getMinY() >= outer.getMinY() - ROUNDING
                && inner.getMaxY() <= outer.getMaxY() + ROUNDING;
    }

    private void breadth(ScrollPane scroll) {
        Node content = scroll.getContent();
        if (content == null || !scroll.isVisible()) {
            return;
        }
        double missing =
                content.getBoundsInParent().getWidth() - scroll.getViewportBounds().getWidth();
        boolean barred =
                scroll.lookupAll(".scroll-bar").stream()
                        .filter(bar -> bar.getParent() == scroll)
                        .anyMatch(
                                bar ->
                                        bar.isVisible()
                                                && ((javafx.scene.control.ScrollBar) bar)
                                                                .getOrientation()
                                                        == javafx.geometry.Orientation.HORIZONTAL);
        if (missing > ROUNDING && !barred) {
            found.add(name(scroll) + " lacks " + Math.round(missing) + " pixels of breadth");
        }
        if (scroll.getViewportBounds().getHeight() < 1
                && content.getBoundsInParent().getHeight() > 1) {
            found.add(name(scroll) + " has no height");
        }
    }

    private static String name(Node node) {
        String words =
                node instanceof Labeled labeled ? " \u201C" + labeled.getText() + "\u201D" : "";
        return node.getClass().getSimpleName()
                + (node.getId() == null ? "" : "#" + node.getId())
                + node.getStyleClass()
                + words;
    }

    private static String shape(Bounds at) {
        return Math.round(at.getMinX())
                + ","
                + Math.round(at.getMinY())
                + " "
                + Math.round(at.getWidth())
                + "\u00D7"
                + Math.round(at.getHeight());
    }
}
