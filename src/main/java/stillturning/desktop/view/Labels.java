package stillturning.desktop.view;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels as several panes use them. */
public final class Labels {

    private static final String[] MUTED = {"text-small", "text-muted"};

    private Labels() {}

    /** A label of some style classes. */
    public static Label of(String words, String... styles) {
        Label label = new Label(words);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Words that go on in the next line, and are never cut. */
    public static Label wrapped(String words, String... styles) {
        Label label = of(words, styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** The same, following a text that changes. */
    public static Label wrapped(ObservableValue<String> words, String... styles) {
        Label label = wrapped("", styles);
        label.textProperty().bind(words);
        return label;
    }

    /** Nobody sees it; it tells how large letters are where it stands. */
    public static Label measure() {
        Label letter = new Label("M");
        letter.setVisible(false);
        letter.setManaged(false);
        return letter;
    }

    /** What stands above a pane. */
    public static Label title(String words) {
        return of(words, "title-4");
    }

    /** A remark in small grey letters. */
    public static Label remark(String words) {
        return wrapped(words, MUTED);
    }

    /** What a list shows while it has nothing in it. */
    public static Label empty(String words) {
        Label label = of(words, "empty-words");
        label.setWrapText(true);
        return label;
    }

    /** Why something was not done; takes no room while it is empty. */
    public static Label refusal() {
        Label label = of("", "danger", "text");
        label.setWrapText(true);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }

    /**
     * A bar across an area with something that the user should know; not there while it is empty.
     *
     * @param kind its colour: accent or warning
     */
    public static Label notice(String id, String kind) {
        Label label = wrapped("", "notice", "notice-" + kind);
        label.setId(id);
        label.setMaxWidth(Double.MAX_VALUE);
        Showing.whileTrue(label, label.textProperty().isNotEmpty());
        return label;
    }
}
