package stillturning.desktop.view;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;

/** Buttons, fields and lists as several panes use them. */
public final class Controls {

    private Controls() {}

    /** A button that is never cut. */
    public static Button button(String words, String id, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> act.run());
        return button;
    }

    /**
     * Names a field to write into.
     *
     * @param prompt what it shows while it is empty
     * @param told what a screen reader says
     */
    public static void field(TextField field, String id, String prompt, String told) {
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(told);
    }

    /** The item of a list on which Enter is pressed. */
    public static <T> void onEnter(ListView<T> list, Consumer<T> act) {
        onEnter(
                list,
                () ->
                        Optional.ofNullable(list.getSelectionModel().getSelectedItem())
                                .ifPresent(act));
    }

    /** What happens when Enter is pressed, or a double click comes. */
    public static void onOpen(Control list, Runnable act) {
        onEnter(list, act);
        onDoubleClick(list, act);
    }

    private static void onEnter(Node node, Runnable act) {
        node.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER) {
                        act.run();
                    }
                });
    }

    /** What happens when a double click comes. */
    public static void onDoubleClick(Node node, Runnable act) {
        node.setOnMouseClicked(
                event -> {
                    if (event.getClickCount() == 2) {
                        act.run();
                    }
                });
    }

    /** An item of a menu. */
    public static MenuItem item(String words, Runnable act) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> act.run());
        return item;
    }

    /** A key with Control. */
    public static KeyCombination control(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    /** What happens when a field is left. */
    public static void onLeave(Node field, Runnable act) {
        field.focusedProperty()
                .addListener(
                        (of, before, now) -> {
                            if (!now) {
                                act.run();
                            }
                        });
    }
}
