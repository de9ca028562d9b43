package stillturning.desktop.view.window;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleButton;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;

/** What others write into a study's files while it is open. */
class OutsideSceneTest {

    @TempDir Path folder;

    private OnScreen screen;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        Path study = folder.resolve("study");
        Samples.copy("first-steps", study);
        screen = OnScreen.open(folder.resolve("set"), Settings.USUAL, 1280, 800);
        screen.study(study);
        desk = screen.window.study().orElseThrow().desk();
        OnScreen.on(
                () -> {
                    screen.window.show(AreaName.DRAW);
                    desk.open("one-bus");
                    return true;
                });
        screen.settle();
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private <T extends Node> T find(String selector, Class<T> type) {
        return type.cast(
                Optional.ofNullable(screen.stage.getScene().lookup(selector))
                        .orElseThrow(() -> new AssertionError("no " + selector)));
    }

    private String text() {
        return requireNonNull(desk.draft().state().texts().get("one-bus.yaml"));
    }

    @Test
    void whatOthersWriteIsNoticedAndComparedPlaceByPlace() throws Exception {
        Path file = desk.draft().folder().resolve("one-bus.yaml");
        OnScreen.on(
                () -> {
                    screen.stage.requestFocus();
                    find("#draw-text-toggle", ToggleButton.class).fire();
                    return true;
                });
        OnScreen.on(
                () -> {
                    CodeArea area = find("#side-text", CodeArea.class);
                    area.replaceText(area.getText().replace("18 Ah", "16 Ah"));
                    return true;
                });
        screen.settle();
        assertTrue(text().contains("16 Ah"));
        String theirs =
                Files.readString(file)
                        .replace("18 Ah", "20 Ah")
                        .replace("AWG 8, fuse 40 A", "AWG 6, fuse 40 A");
        Files.writeString(file, theirs);
        long written = System.nanoTime();
        OnScreen.until(() -> button("Compare \u2026").isPresent());
        double seconds = (System.nanoTime() - written) / 1e9;
        assertTrue(seconds < 2, seconds + " s");
        OnScreen.on(
                () -> {
                    button("Compare \u2026").orElseThrow().fire();
                    return true;
                });
        screen.picture(Path.of("target", "screens", "compare.png"));
        OnScreen.on(
                () -> {
                    find("#mine-0", RadioButton.class).fire();
                    find("#compare-use", Button.class).fire();
                    return true;
                });
        screen.settle();
        assertTrue(text().contains("16 Ah") && text().contains("AWG 6, fuse 40 A"), text());
        OnScreen.on(
                () -> {
                    screen.window.save();
                    return true;
                });
        OnScreen.until(() -> button("Compare \u2026").isEmpty());
        assertEquals(text(), Files.readString(file));
    }

    private Optional<Button> button(String words) {
        return screen.stage.getScene().getRoot().lookupAll(".button").stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .filter(b -> words.equals(b.getText()))
                .findFirst();
    }
}
