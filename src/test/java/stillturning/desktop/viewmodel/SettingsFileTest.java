package stillturning.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.Paper;

class SettingsFileTest {

    @TempDir private Path folder;

    @Test
    void settingsComeBackAsTheyWere() throws IOException {
        SettingsFile file = new SettingsFile(folder.resolve("new").resolve("settings.properties"));
        Settings settings =
                new Settings(
                        Paper.DARK,
                        150,
                        UnitSystem.US,
                        List.of("/a", "C:\\Flügel = 2"),
                        Optional.of(new Settings.WindowFrame(1, 2, 1024, 700, true)),
                        new Settings.SidePanels(false, true));

        file.write(settings);

        assertEquals(settings, file.read());
    }

    @Test
    void withoutAFileEverythingIsAsUsual() {
        assertEquals(Settings.USUAL, new SettingsFile(folder.resolve("none.properties")).read());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "paper=PINK",
                "scale-percent=big",
                "scale-percent=NaN",
                "window.x=1",
                "recent.2=/no-first",
                "\u0000",
                "paper=\\uZZZZ"
            })
    void whatCannotBeReadIsAsUsual(String text) throws IOException {
        Path path = folder.resolve("settings.properties");
        Files.writeString(path, text);

        assertEquals(Settings.USUAL, new SettingsFile(path).read());
    }

    @Test
    void whatANewerProgramWroteIsReadAsFarAsItIsKnown() throws IOException {
        Path path = folder.resolve("settings.properties");
        Files.writeString(
                path,
                """
                paper=DARK
                scale-percent=900
                units=US
                smell=roses
                """);

        Settings read = new SettingsFile(path).read();

        assertEquals(Paper.DARK, read.paper());
        assertEquals(Settings.LARGEST_PERCENT, read.scalePercent());
    }

    @Test
    void theStudyOpenedLastComesFirstAndOnce() {
        Settings settings = Settings.USUAL.opened("/a").opened("/b").opened("/a");
        assertEquals(List.of("/a", "/b"), settings.recent());
        assertEquals(List.of("/b"), settings.forgotten("/a").recent());
    }

    @Test
    void oldStudiesAreForgotten() {
        Settings settings =
                IntStream.range(0, 40)
                        .mapToObj(String::valueOf)
                        .reduce(Settings.USUAL, Settings::opened, (a, b) -> b);
        assertEquals(12, settings.recent().size());
        assertEquals("39", settings.recent().get(0));
    }

    @Test
    void eachSystemHasItsPlace() {
        Path home = Path.of("home");
        assertEquals(
                Path.of("home/.config/stillturning"),
                SettingsFile.userFolder(Map.of(), "Linux", home));
        assertEquals(
                Path.of("cfg/stillturning"),
                SettingsFile.userFolder(Map.of("XDG_CONFIG_HOME", "cfg"), "Linux", home));
        assertEquals(
                Path.of("home/AppData/Roaming/stillturning"),
                SettingsFile.userFolder(Map.of(), "Windows 11", home));
        assertEquals(
                Path.of("home/Library/Application Support/stillturning"),
                SettingsFile.userFolder(Map.of(), "Mac OS X", home));
    }
}
