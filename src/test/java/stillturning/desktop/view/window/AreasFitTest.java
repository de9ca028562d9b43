package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.report.drawing.Paper;

/**
 * Every area, at the sizes of window and letters that people have, shows all of its words, and none
 * too faint.
 */
@Timeout(600)
class AreasFitTest {

    private static final Path PICTURES = Path.of("target", "screens", "fit");
    private static final String CANDIDATE = "solid-state-split-engine";

    /** Sheets of Size that are looked at, among them those with the longest words. */
    private static final int SHEETS = 14;

    private final List<String> cut = new ArrayList<>();
    private final Map<String, Integer> pictured = new HashMap<>();
    @TempDir private Path folder;

    static Stream<Arguments> windows() {
        return Stream.of(
                Arguments.of(1280, 800, 100, Paper.LIGHT),
                Arguments.of(1280, 800, 200, Paper.DARK),
                Arguments.of(1024, 700, 100, Paper.LIGHT));
    }

    @Thorough
    @ParameterizedTest
    @MethodSource("windows")
    void nothingIsCutFaintOrUnnamed(int width, int height, int percent, Paper paper)
            throws IOException {
        Path study = folder.resolve("sandpiper");
        Samples.copy(Samples.LARGE, study);
        Settings settings = Settings.USUAL.scaled(percent).with(paper);
        OnScreen screen = OnScreen.open(folder.resolve("set"), settings, width, height);
        String size = width + "x" + height + "-" + percent;
        try {
            look(screen, size, "start");
            screen.study(study);
            draw(screen, size);
            size(screen, size);
            breaking(screen, size);
            decide(screen, size);
            go(screen, Destination.of(AreaName.EXPLAIN));
            look(screen, size, "explain");
        } finally {
            screen.close();
        }
        assertEquals(List.of(), cut, () -> String.join("\n", cut));
    }

    private void draw(OnScreen screen, String size) {
        go(screen, new Destination(AreaName.DRAW, Optional.of(CANDIDATE), Optional.empty()));
        look(screen, size, "draw");
        does(screen, () -> find(screen, "draw-adding", ToggleButton.class).fire());
        look(screen, size, "draw-adding");
        does(screen, () -> find(screen, "draw-adding", ToggleButton.class).fire());
        go(screen, Destination.of(AreaName.DRAW, CANDIDATE, "main-bus"));
        look(screen, size, "draw-part");
    }

    private void size(OnScreen screen, String size) {
        go(screen, Destination.of(AreaName.SIZE));
        for (int sheet = 0; sheet < SHEETS; sheet++) {
            int at = sheet;
            does(
                    screen,
                    () ->
                            find(screen, "size-contents", ListView.class)
                                    .getSelectionModel()
                                    .select(at));
            String name = "size-" + sheet;
            folds(screen, List.of("size-fold"), () -> look(screen, size, name));
        }
    }

    private void breaking(OnScreen screen, String size) {
        go(screen, Destination.of(AreaName.BREAK, CANDIDATE, "main-bus: short to ground"));
        folds(
                screen,
                List.of("break-fold", "pictures-fold", "words-fold"),
                () -> tabs(screen, size, "story-tabs", "break"));
        does(screen, () -> find(screen, "break-tabs", TabPane.class).getSelectionModel().select(1));
        look(screen, size, "break-all");
        does(screen, () -> find(screen, "break-tabs", TabPane.class).getSelectionModel().select(2));
        look(screen, size, "break-together");
        does(screen, () -> find(screen, "break-tabs", TabPane.class).getSelectionModel().select(0));
    }

    private void decide(OnScreen screen, String size) {
        go(screen, Destination.of(AreaName.DECIDE));
        folds(
                screen,
                List.of("decide-fold", "ranking-fold"),
                () -> tabs(screen, size, "decide-tabs", "decide"));
    }

    private void tabs(OnScreen screen, String size, String id, String name) {
        TabPane tabs = OnScreen.on(() -> find(screen, id, TabPane.class));
        if (tabs == null) {
            look(screen, size, name);
            return;
        }
        for (int i = 0; i < tabs.getTabs().size(); i++) {
            int at = i;
            does(screen, () -> tabs.getSelectionModel().select(at));
            look(screen, size, name + "-" + i);
        }
    }

    private static <N> N find(OnScreen screen, String id, Class<N> kind) {
        return kind.cast(screen.stage.getScene().lookup("#" + id));
    }

    private static void go(OnScreen screen, Destination destination) {
        does(screen, () -> screen.window.study().orElseThrow().desk().go(destination));
        OnScreen.pause(300);
        screen.settle();
    }

    private static void does(OnScreen screen, Runnable act) {
        OnScreen.on(
                () -> {
                    act.run();
                    return true;
                });
        screen.settle();
    }

    /** Everything that lies under tabs where there is room for one pane only. */
    private void folds(OnScreen screen, List<String> folds, Runnable seen) {
        if (folds.isEmpty()) {
            seen.run();
            return;
        }
        List<String> rest = folds.subList(1, folds.size());
        Optional<TabPane> fold =
                OnScreen.on(() -> Optional.ofNullable(find(screen, folds.get(0), TabPane.class)));
        if (fold.isEmpty()) {
            folds(screen, rest, seen);
            return;
        }
        for (int i = 0; i < fold.get().getTabs().size(); i++) {
            int at = i;
            does(screen, () -> fold.get().getSelectionModel().select(at));
            folds(screen, rest, seen);
        }
    }

    private void look(OnScreen screen, String size, String told) {
        String name = told + "-" + pictured.merge(size + told, 1, Integer::sum);
        OnScreen.pause(250);
        List<String> here =
                OnScreen.on(
                        () -> {
                            screen.stage.getScene().getRoot().applyCss();
                            screen.stage.getScene().getRoot().layout();
                            List<String> bad =
                                    new ArrayList<>(Cut.in(screen.stage.getScene().getRoot()));
                            bad.addAll(Faint.in(screen.stage.getScene().getRoot()));
                            bad.addAll(Unnamed.in(screen.stage.getScene().getRoot()));
                            return bad;
                        });
        here.forEach(words -> cut.add(size + " " + name + ": " + words));
        screen.picture(PICTURES.resolve(name + "-" + size + ".png"));
    }
}
