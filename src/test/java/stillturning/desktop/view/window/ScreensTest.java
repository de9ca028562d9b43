package stillturning.desktop.view.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.control.TabPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.LargeStudy;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.Settings;
import stillturning.files.Samples;
import stillturning.report.drawing.Paper;

/**
 * Takes a picture of every area, to be looked at: all of them into {@code target/screens}, those
 * that README shows into {@code reports/pictures}.
 */
@EnabledIfSystemProperty(named = "screens.renew", matches = "true")
class ScreensTest {

    private static final Path ALL = Path.of("target", "screens");
    private static final Path KEPT = Path.of("reports", "pictures");

    /** A study, which of its candidates is open, and which failure is told. */
    private record Shown(String name, Path folder, String candidate, String failure) {}

    @TempDir private Path folder;

    private record Size(int width, int height) {
        @Override
        public String toString() {
            return width + "x" + height;
        }
    }

    @Test
    void everyAreaIsPictured() throws IOException {
        Path sandpiper = folder.resolve(Samples.LARGE);
        Samples.copy(Samples.LARGE, sandpiper);
        Path large = folder.resolve("large");
        LargeStudy.write(large);
        Shown small =
                new Shown(
                        "sandpiper",
                        sandpiper,
                        "solid-state-split-engine",
                        "main-bus: short to ground");
        Shown many = new Shown("large", large, "large", "bus-1: short to ground");
        for (Paper paper : Paper.values()) {
            for (Size size : new Size[] {new Size(1280, 800), new Size(1920, 1080)}) {
                Settings settings = Settings.USUAL.with(paper);
                OnScreen screen =
                        OnScreen.open(folder.resolve("set"), settings, size.width, size.height);
                String tail = "-" + paper.name().toLowerCase(Locale.ROOT) + "-" + size;
                screen.picture(ALL.resolve("start" + tail + ".png"));
                picture(screen, small, tail);
                if (paper == Paper.LIGHT && size.width == 1280) {
                    picture(screen, many, tail);
                }
                screen.close();
            }
        }
        Map<String, String> kept = new LinkedHashMap<>();
        kept.put("start-light-1280x800", "desktop-start");
        for (String area : new String[] {"draw", "size", "break", "decide", "explain"}) {
            kept.put("sandpiper-" + area + "-light-1280x800", "desktop-" + area);
        }
        kept.put("sandpiper-break-dark-1280x800", "desktop-break-dark");
        kept.put("large-draw-light-1280x800", "desktop-draw-large");
        Set<ByteBuffer> different = new HashSet<>();
        for (Map.Entry<String, String> one : kept.entrySet()) {
            different.add(ByteBuffer.wrap(keep(one.getKey(), one.getValue())));
        }
        assertEquals(kept.size(), different.size(), "one area's picture is that of another");
    }

    /** While it looks for layouts and when it has found them, at two sizes. */
    @Test
    void theSearchForSimplerLayoutsIsPicturedAsItGrowsAndAtItsEnd() throws IOException {
        Path sandpiper = folder.resolve(Samples.LARGE);
        Samples.copy(Samples.LARGE, sandpiper);
        OnScreen screen = OnScreen.open(folder.resolve("set"), Settings.USUAL, 1280, 800);
        screen.study(sandpiper);
        OnScreen.on(
                () -> {
                    screen.window.study().orElseThrow().desk().go(AreaName.DECIDE, "");
                    return true;
                });
        OnScreen.pause(500);
        OnScreen.on(
                () -> {
                    TabPane tabs = (TabPane) screen.stage.getScene().lookup("#decide-tabs");
                    tabs.getSelectionModel().select(3);
                    return true;
                });
        OnScreen.pause(500);
        fire(screen, "#explore-start");
        OnScreen.until(() -> found(screen) > 0);
        screen.picture(ALL.resolve("simpler-growing.png"));
        fire(screen, "#explore-stop");
        screen.settle();
        OnScreen.pause(1500);
        screen.picture(ALL.resolve("simpler-found.png"));
        OnScreen.on(
                () -> {
                    screen.stage.setWidth(1920);
                    screen.stage.setHeight(1080);
                    return true;
                });
        OnScreen.pause(1500);
        screen.picture(ALL.resolve("simpler-found-1920x1080.png"));
        assertTrue(OnScreen.on(() -> found(screen) > 0));
        screen.close();
    }

    private static int found(OnScreen screen) {
        return screen.stage.getScene().getRoot().lookupAll(".trade-found").size();
    }

    private static void fire(OnScreen screen, String button) {
        OnScreen.on(
                () -> {
                    ((Button) screen.stage.getScene().lookup(button)).fire();
                    return true;
                });
    }

    private static void picture(OnScreen screen, Shown shown, String tail) {
        screen.study(shown.folder);
        for (AreaName area : AreaName.values()) {
            if (area != AreaName.START) {
                OnScreen.on(
                        () -> {
                            screen.window.study().orElseThrow().desk().go(destination(area, shown));
                            return true;
                        });
                OnScreen.pause(500);
                screen.settle();
                if (area == AreaName.EXPLAIN) {
                    write(screen);
                }
                OnScreen.pause(1500);
                String file = shown.name + "-" + area.words().toLowerCase(Locale.ROOT) + tail;
                screen.picture(ALL.resolve(file + ".png"));
            }
        }
    }

    private static void write(OnScreen screen) {
        OnScreen.on(
                () -> {
                    ((Button) screen.stage.getScene().lookup("#explain-write")).fire();
                    return true;
                });
        OnScreen.until(() -> screen.stage.getScene().lookup("#explain-page") != null);
        screen.settle();
    }

    private static Destination destination(AreaName area, Shown shown) {
        return area == AreaName.BREAK
                ? Destination.of(area, shown.candidate, shown.failure)
                : new Destination(area, Optional.of(shown.candidate), Optional.empty());
    }

    private static byte[] keep(String file, String as) throws IOException {
        Files.createDirectories(KEPT);
        byte[] picture = Files.readAllBytes(ALL.resolve(file + ".png"));
        Files.write(KEPT.resolve(as + ".png"), picture);
        return picture;
    }
}
