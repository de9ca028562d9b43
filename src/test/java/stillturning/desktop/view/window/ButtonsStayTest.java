package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ListCell;
import javafx.scene.control.TabPane;
import javafx.util.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.desktop.draft.edits.StudyEdits;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.files.edit.ChangeRefused;

/** A button that is about to be pressed stays where it is, whatever is computed meanwhile. */
@Timeout(300)
class ButtonsStayTest {

    /** Number of the tab where simpler layouts are looked for. */
    private static final int SIMPLER = 3;

    private final Map<String, Set<Bounds>> places = new TreeMap<>();
    @TempDir private Path folder;
    private Optional<OnScreen> opened = Optional.empty();

    @BeforeEach
    void open() throws IOException {
        Path study = folder.resolve("study");
        Samples.copy("first-steps", study);
        opened = Optional.of(OnScreen.open(folder.resolve("set"), Settings.USUAL, 1280, 800));
        screen().study(study);
    }

    @AfterEach
    void close() {
        screen().close();
    }

    private OnScreen screen() {
        return opened.orElseThrow();
    }

    private Desk desk() {
        return screen().window.study().orElseThrow().desk();
    }

    static Stream<AreaName> areas() {
        return Stream.of(
                        AreaName.DECIDE,
                        AreaName.DRAW,
                        AreaName.EXPLAIN,
                        AreaName.SIZE,
                        AreaName.BREAK)
                .limit(Effort.cases(2, 5));
    }

    @ParameterizedTest
    @MethodSource("areas")
    void whileEverythingIsAssessedAgain(AreaName area) {
        go(area);
        watch(rename("radio", "wireless"));
        assertEquals(Map.of(), moved());
    }

    @Thorough
    @Test
    void whileAnotherAreaIsChosen() {
        for (AreaName area : AreaName.values()) {
            go(area);
            note();
        }
        places.keySet().removeIf(name -> !name.startsWith("area-"));
        assertEquals(AreaName.values().length, places.size());
        assertEquals(Map.of(), moved());
    }

    @Thorough
    @Test
    void whileSizesAreMadeAgain() {
        go(AreaName.SIZE);
        watch(fire("#size-again"));
        assertEquals(Map.of(), moved());
    }

    @Thorough
    @Test
    void whileThePageIsWritten() {
        go(AreaName.EXPLAIN);
        watch(fire("#explain-write"));
        assertEquals(Map.of(), moved());
    }

    @Thorough
    @Test
    void whileSimplerLayoutsAreLookedFor() {
        go(AreaName.DECIDE);
        OnScreen.on(
                () -> {
                    TabPane tabs = (TabPane) screen().stage.getScene().lookup("#decide-tabs");
                    tabs.getSelectionModel().select(SIMPLER);
                    return true;
                });
        watch(
                () -> {
                    fire("#explore-start").run();
                    PauseTransition later = new PauseTransition(Duration.seconds(1));
                    later.setOnFinished(end -> fire("#explore-stop").run());
                    later.play();
                });
        assertEquals(Map.of(), moved());
    }

    private Runnable fire(String id) {
        return () -> ((Button) screen().stage.getScene().lookup(id)).fire();
    }

    private Runnable rename(String load, String to) {
        return () -> {
            try {
                StudyEdits edits =
                        new StudyEdits(
                                desk().draft().document(Desk.STUDY_FILE).orElseThrow(),
                                desk().candidates().stream()
                                        .map(id -> desk().draft().document(id + ".yaml"))
                                        .flatMap(Optional::stream)
                                        .toList());
                desk().make(edits.renameLoad(load, to));
            } catch (ChangeRefused refused) {
                throw new AssertionError(refused.why(), refused);
            }
        };
    }

    private void go(AreaName area) {
        OnScreen.on(
                () -> {
                    desk().go(Destination.of(area));
                    return true;
                });
        OnScreen.pause(300);
        screen().settle();
    }

    private void watch(Runnable act) {
        note();
        OnScreen.on(
                () -> {
                    act.run();
                    return true;
                });
        do {
            OnScreen.pause(30);
            note();
        } while (OnScreen.on(() -> !desk().work().running().isEmpty()));
        OnScreen.pause(200);
        note();
        assertTrue(places.size() > 12, () -> places.keySet().toString());
    }

    private void note() {
        OnScreen.on(
                () -> {
                    Parent root = screen().stage.getScene().getRoot();
                    root.applyCss();
                    root.layout();
                    note(root);
                    return true;
                });
    }

    /** Those in the lines of a list go with their lines. */
    private void note(Node node) {
        if (!node.isVisible() || node instanceof ListCell) {
            return;
        }
        if (node instanceof ButtonBase button) {
            String name = Optional.ofNullable(button.getId()).orElse(button.getText());
            places.computeIfAbsent(name, n -> new LinkedHashSet<>())
                    .add(rounded(button.localToScene(button.getLayoutBounds())));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::note);
        }
    }

    private static Bounds rounded(Bounds at) {
        return new BoundingBox(
                Math.rint(at.getMinX()),
                Math.rint(at.getMinY()),
                Math.rint(at.getWidth()),
                Math.rint(at.getHeight()));
    }

    private Map<String, Set<Bounds>> moved() {
        Map<String, Set<Bounds>> moved = new TreeMap<>(places);
        moved.values().removeIf(at -> at.size() < 2);
        return moved;
    }
}
