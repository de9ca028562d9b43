package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.edits.StudyEdits;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.edit.CandidateEdits;
import stillturning.model.Terminal;

/** The whole job in the real window: from the first question to the page, and all taken back. */
class WholeJobTest {

    private static final String FRESH = "fresh";

    @TempDir private Path folder;

    private final String home = System.getProperty("user.home");

    private Optional<OnScreen> opened = Optional.empty();

    @BeforeEach
    void open() {
        System.setProperty("user.home", folder.toString());
        opened = Optional.of(OnScreen.open(folder.resolve("set"), Settings.USUAL, 1280, 800));
    }

    @AfterEach
    void close() {
        screen().close();
        System.setProperty("user.home", home);
    }

    private OnScreen screen() {
        return opened.orElseThrow();
    }

    private Desk desk() {
        return screen().window.study().orElseThrow().desk();
    }

    private <T extends Node> T find(String selector, Class<T> type) {
        return type.cast(
                Optional.ofNullable(screen().stage.getScene().lookup(selector))
                        .orElseThrow(() -> new AssertionError("no " + selector)));
    }

    private void press(String button) {
        OnScreen.on(
                () -> {
                    find(button, Button.class).fire();
                    return true;
                });
    }

    private void enter(String field, String text) {
        OnScreen.on(
                () -> {
                    TextField box = find(field, TextField.class);
                    box.setText(text);
                    box.fireEvent(new ActionEvent());
                    return true;
                });
    }

    private void show(AreaName area) {
        OnScreen.on(
                () -> {
                    screen().window.show(area);
                    return true;
                });
        screen().settle();
        // what scrolls has its nodes only when it has a skin, at the latest with the next frame
        OnScreen.on(
                () -> {
                    Parent root = screen().stage.getScene().getRoot();
                    root.applyCss();
                    root.layout();
                    return true;
                });
    }

    @Thorough
    @Test
    void fromTheFirstQuestionToThePageAndAllOfItTakenBack() throws IOException {
        begin();
        SortedMap<String, String> before = desk().draft().state().texts();
        draw();
        breakIt();
        decide();
        explain();
        save();
        OnScreen.on(
                () -> {
                    while (desk().texts().get().undo().isPresent()) {
                        desk().undo();
                    }
                    return true;
                });
        screen().settle();
        assertEquals(before, desk().draft().state().texts());
    }

    private void begin() {
        OnScreen.on(
                () -> {
                    find("#study-title", TextField.class).setText("Whole job");
                    return true;
                });
        press("#make-study");
        OnScreen.until(() -> screen().window.study().isPresent());
        screen().settle();
        assertTrue(Files.exists(folder.resolve("Stillturning/whole-job/study.yaml")));
        int ranked = OnScreen.on(() -> find("#ranking", ListView.class).getItems().size());
        assertEquals(desk().candidates().size(), ranked);
    }

    /** A candidate from nothing, with a second battery beside the first. */
    private void draw() {
        OnScreen.on(
                () -> {
                    desk().make(
                                    new StudyEdits(
                                                    desk().draft()
                                                            .document(Desk.STUDY_FILE)
                                                            .orElseThrow(),
                                                    List.of())
                                            .empty(FRESH, "From nothing"));
                    desk().open(FRESH);
                    screen().window.show(AreaName.DRAW);
                    return true;
                });
        screen().settle();
        OnScreen.on(
                () -> {
                    find("#draw-adding", ToggleButton.class).fire();
                    return true;
                });
        enter("#palette-search", "battery");
        screen().settle();
        String ground = returnOfTheBattery();
        join("battery-2.minus", ground, "wire AWG 4");
        join("battery-2.plus", "main-bus.bar", "fuse 60 A class high-current, wire AWG 4");
        assertTrue(desk().study().flatMap(s -> s.candidate(FRESH)).isPresent());
        assertEquals(List.of(), desk().read().get().problems());
    }

    private String returnOfTheBattery() {
        String text = Optional.ofNullable(texts().get("fresh.yaml")).orElse("");
        assertTrue(text.contains("battery-2"), text);
        String link = text.substring(text.indexOf("from battery.minus to ") + 22);
        return link.substring(0, link.indexOf(',')) + ".stud";
    }

    private SortedMap<String, String> texts() {
        return desk().draft().state().texts();
    }

    private String studyText() {
        return Optional.ofNullable(texts().get(Desk.STUDY_FILE)).orElse("");
    }

    private void join(String one, String other, String items) {
        OnScreen.on(
                () -> {
                    CandidateEdits shaping =
                            new CandidateEdits(
                                    desk().draft().document("fresh.yaml").orElseThrow(),
                                    desk().draft().document(Desk.STUDY_FILE).orElseThrow());
                    desk().make(
                                    Change.of(
                                            shaping.join(
                                                    terminal(one),
                                                    terminal(other),
                                                    Optional.of(items))));
                    return true;
                });
        screen().settle();
    }

    private static Terminal terminal(String written) {
        String[] names = written.split("\\.", 2);
        return new Terminal(names[0], names[1]);
    }

    private void breakIt() {
        OnScreen.on(
                () -> {
                    desk().go(Destination.of(AreaName.BREAK, FRESH, "main-bus: short to ground"));
                    return true;
                });
        OnScreen.until(() -> !find("#story-lines", ListView.class).getItems().isEmpty());
        screen().settle();
        String at = OnScreen.on(() -> find("#time-now", Label.class).getText());
        press("#time-on");
        assertNotEquals(at, OnScreen.on(() -> find("#time-now", Label.class).getText()));
    }

    private void decide() {
        show(AreaName.DECIDE);
        int ranked = OnScreen.on(() -> find("#ranking", ListView.class).getItems().size());
        assertEquals(desk().candidates().size(), ranked);
        OnScreen.on(
                () -> {
                    Slider slider =
                            (Slider)
                                    screen()
                                            .stage
                                            .getScene()
                                            .getRoot()
                                            .lookupAll(".slider")
                                            .stream()
                                            .findFirst()
                                            .orElseThrow();
                    slider.increment();
                    return true;
                });
        press("#write-weights");
        screen().settle();
        assertTrue(studyText().contains("weights:"));
    }

    private void explain() {
        show(AreaName.EXPLAIN);
        OnScreen.on(
                () -> {
                    find("#explain-rationale", TextArea.class).requestFocus();
                    find("#explain-rationale", TextArea.class).setText("Two of everything.");
                    return true;
                });
        OnScreen.on(
                () -> {
                    find("#explain-write", Button.class).requestFocus();
                    return true;
                });
        screen().settle();
        assertTrue(studyText().contains("Two of everything."));
        press("#explain-write");
        screen().settle();
        OnScreen.until(() -> screen().stage.getScene().lookup("#explain-page") != null);
    }

    private void save() throws IOException {
        press("#save");
        Path file = folder.resolve("Stillturning/whole-job/study.yaml");
        assertEquals(studyText(), Files.readString(file));
        assertTrue(Files.exists(file.resolveSibling("study.yaml~")));
    }
}
