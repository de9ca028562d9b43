package stillturning.desktop.view.window;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stillturning.desktop.viewmodel.Notice;
import stillturning.desktop.viewmodel.Notice.Reply;
import stillturning.desktop.viewmodel.Notice.Weight;

/**
 * What the user should know, above the area, until it is answered or put away; never in the way.
 */
final class Notices extends VBox {

    Notices() {
        getStyleClass().add("notices");
    }

    /** Shows news in the place of older ones of the same topic. */
    void show(Notice news) {
        clear(news.topic());
        String style = style(news.weight());
        Label sign = new Label(sign(news.weight()));
        sign.getStyleClass().addAll("text", style);
        Label text = new Label(news.words());
        text.setWrapText(true);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox notice = new HBox(sign, text);
        notice.getStyleClass().addAll("notice", "notice-" + style);
        notice.setUserData(news.topic());
        notice.setAccessibleRole(AccessibleRole.TEXT);
        notice.setAccessibleText(news.words());
        news.replies().stream()
                .map(reply -> button(reply, news.topic()))
                .forEach(notice.getChildren()::add);
        notice.getChildren().add(button(new Reply("Put away", () -> {}), news.topic()));
        getChildren().add(notice);
    }

    private static String sign(Weight weight) {
        return switch (weight) {
            case NEWS -> "\u2139";
            case CARE -> "\u26A0";
            case WRONG -> "\u2716";
        };
    }

    private static String style(Weight weight) {
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

    /** Topics of what is shown. */
    List<String> topics() {
        return getChildren().stream().map(Node::getUserData).map(String::valueOf).toList();
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
