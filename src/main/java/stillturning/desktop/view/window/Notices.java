package stillturning.desktop.view.window;

import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stillturning.desktop.view.Labels;
import stillturning.desktop.view.Layout;
import stillturning.desktop.viewmodel.Notice;
import stillturning.desktop.viewmodel.Notice.Reply;
import stillturning.desktop.viewmodel.Notice.Severity;

/**
 * What the user should know, above the area, until it is answered or put away; never in the way.
 */
final class Notices extends VBox {

    Notices() {
        getStyleClass().add("notices");
    }

    /** Shows a notice in the place of an older one of the same topic. */
    void show(Notice notice) {
        clear(notice.topic());
        String style = style(notice.weight());
        Label text = Labels.of(notice.words());
        text.setWrapText(true);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox bar = new HBox(Labels.of(sign(notice.weight()), "text", style), Layout.wide(text));
        bar.getStyleClass().addAll("notice", "notice-" + style);
        bar.setUserData(notice.topic());
        bar.setAccessibleRole(AccessibleRole.TEXT);
        bar.setAccessibleText(notice.words());
        notice.replies().stream()
                .map(reply -> button(reply, notice.topic()))
                .forEach(bar.getChildren()::add);
        Region apart = new Region();
        apart.getStyleClass().add("notice-gap");
        // away from what does something, so that nobody hits the one for the other
        bar.getChildren().addAll(apart, button(new Reply("Put away", () -> {}), notice.topic()));
        getChildren().add(bar);
    }

    private static String sign(Severity weight) {
        return switch (weight) {
            case NEWS -> "\u2139";
            case CARE -> "\u26A0";
            case WRONG -> "\u2716";
        };
    }

    private static String style(Severity weight) {
        return switch (weight) {
            case NEWS -> "accent";
            case CARE -> "warning";
            case WRONG -> "danger";
        };
    }

    /** Takes the notice of a topic away. */
    void clear(String topic) {
        getChildren().removeIf(n -> topic.equals(n.getUserData()));
    }

    /** Takes all notices away. */
    void clearAll() {
        getChildren().clear();
    }

    private Node button(Reply reply, String topic) {
        Button button = new Button(reply.words());
        button.getStyleClass().add("small");
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(
                event -> {
                    clear(topic);
                    reply.act().run();
                });
        return button;
    }
}
