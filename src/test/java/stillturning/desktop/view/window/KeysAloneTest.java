package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;

/** A failure is looked for, played and gone through by somebody who has no mouse. */
@Timeout(600)
class KeysAloneTest {

    private static final int MOST_TABS = 80;

    @TempDir private Path folder;
    private OnScreen screen;

    @BeforeEach
    @SuppressWarnings("NullAway.Init") // made before each test
    void open() throws IOException {
        Path study = folder.resolve("study");
        Samples.copy("first-steps", study);
        screen = OnScreen.open(folder.resolve("set"), Settings.USUAL, 1280, 800);
        screen.study(study);
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private static KeyEvent event(
            javafx.event.EventType<KeyEvent> type, KeyCode code, boolean shift, boolean control) {
        return new KeyEvent(type, "", "", code, shift, control, false, false);
    }

    /** Presses a key where the focus is, as a keyboard does. */
    private void key(KeyCode code, boolean shift, boolean control) {
        OnScreen.on(
                () -> {
                    Node owner = focused();
                    owner.fireEvent(event(KeyEvent.KEY_PRESSED, code, shift, control));
                    owner.fireEvent(event(KeyEvent.KEY_RELEASED, code, shift, control));
                    return true;
                });
        screen.settle();
    }

    private void key(KeyCode code) {
        key(code, false, false);
    }

    private Node focused() {
        return Optional.ofNullable(screen.stage.getScene().getFocusOwner())
                .orElseGet(() -> screen.stage.getScene().getRoot());
    }

    private void type(String words) {
        for (int at = 0; at < words.length(); at++) {
            String letter = words.substring(at, at + 1);
            OnScreen.on(
                    () -> {
                        focused()
                                .fireEvent(
                                        new KeyEvent(
                                                KeyEvent.KEY_TYPED,
                                                letter,
                                                "",
                                                KeyCode.UNDEFINED,
                                                false,
                                                false,
                                                false,
                                                false));
                        return true;
                    });
        }
        screen.settle();
    }

    /** Goes on by Tab until something has the focus. */
    private void tabTo(String id) {
        Set<String> passed = new LinkedHashSet<>();
        for (int tab = 0; tab < MOST_TABS; tab++) {
            String here = OnScreen.on(() -> String.valueOf(focused().getId()));
            if (here.equals(id)) {
                return;
            }
            passed.add(here);
            key(KeyCode.TAB);
        }
        throw new AssertionError("Tab never comes to " + id + ", only to " + passed);
    }

    private String words(String selector) {
        return OnScreen.on(() -> shown(selector));
    }

    private String shown(String selector) {
        return ((Label) screen.stage.getScene().lookup(selector)).getText();
    }

    @Thorough
    @Test
    void aFailureIsFoundPlayedGoneThroughAndPairedWithAnother() {
        key(KeyCode.getKeyCode(String.valueOf(AreaName.BREAK.number())), false, true);
        assertTrue(OnScreen.on(() -> screen.stage.getScene().lookup("#time-track") != null));
        tabTo("failure-search");
        type("main bus short");
        key(KeyCode.ENTER);
        String alone = words("#break-outcome");
        assertNotEquals("Nothing fails", alone);

        tabTo("time-track");
        String start = words("#time-now");
        key(KeyCode.RIGHT);
        String event = words("#time-now");
        assertNotEquals(start, event);
        for (int small = 0; small < 20; small++) {
            key(KeyCode.RIGHT, true, false);
        }
        assertNotEquals(event, words("#time-now"));
        key(KeyCode.HOME);
        assertEquals(start, words("#time-now"));
        key(KeyCode.SPACE);
        OnScreen.until(() -> !shown("#time-now").equals(start));
        key(KeyCode.SPACE);
        key(KeyCode.END);
        assertNotEquals(start, words("#time-now"));

        tabTo("failure-search");
        key(KeyCode.ESCAPE);
        assertEquals("", OnScreen.on(() -> ((TextField) focused()).getText()));
        type("radio stops");
        key(KeyCode.DOWN);
        assertEquals("failure-list", OnScreen.on(() -> focused().getId()));
        key(KeyCode.ENTER, false, true);
        assertEquals(
                2,
                OnScreen.on(
                        () ->
                                screen.stage
                                        .getScene()
                                        .getRoot()
                                        .lookupAll(".picked-failure")
                                        .size()),
                () -> "two fail together");
    }
}
