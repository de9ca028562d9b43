package stillturning.desktop.viewmodel;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import stillturning.desktop.viewmodel.Settings.SidePanels;
import stillturning.desktop.viewmodel.Settings.WindowFrame;
import stillturning.quantity.UnitSystem;
import stillturning.report.drawing.Paper;
import stillturning.yaml.disk.WholeFile;

/**
 * The file that settings are kept in, between one start and the next. It is read before the first
 * window is shown, so nothing that takes long to load has a part in it.
 *
 * @param path where it is
 */
public record SettingsFile(Path path) {

    private static final String FOLDER = "stillturning";
    private static final String NAME = "settings.properties";

    private static final String PAPER = "paper";
    private static final String SCALE = "scale-percent";
    private static final String UNITS = "units";
    private static final String RECENT = "recent.";
    private static final String MAXIMIZED = "window.maximized";
    private static final String ADDITIONS = "draw.additions";
    private static final String VALUES = "draw.values";
    private static final String SHOWN = "shown";
    private static final String AWAY = "put away";
    private static final List<String> FRAME =
            List.of("window.x", "window.y", "window.width", "window.height");

    /** The user's own, where the system keeps such files. */
    public static SettingsFile usual() {
        return new SettingsFile(
                userFolder(System.getenv(), System.getProperty("os.name", ""), home())
                        .resolve(NAME));
    }

    /** Where the system keeps what a program wants to remember. */
    static Path userFolder(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return folder(environment.get("APPDATA"), home.resolve("AppData").resolve("Roaming"));
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(FOLDER);
        }
        return folder(environment.get("XDG_CONFIG_HOME"), home.resolve(".config"));
    }

    private static Path folder(@Nullable String stated, Path usual) {
        Path parent = stated == null || stated.isBlank() ? usual : Path.of(stated);
        return parent.resolve(FOLDER);
    }

    private static Path home() {
        return Path.of(System.getProperty("user.home", "."));
    }

    /** Folder for what is unsaved when the program ends without warning. */
    public Path recoveryFolder() {
        return path.toAbsolutePath().resolveSibling("unsaved");
    }

    /** What is kept; the usual where nothing is, or nothing that can be read. */
    public Settings read() {
        Properties kept = new Properties();
        try (Reader in = Files.newBufferedReader(path)) {
            kept.load(in);
        } catch (IOException | IllegalArgumentException unreadable) {
            return Settings.USUAL;
        }
        return new Settings(
                named(kept, PAPER, Paper.values(), Settings.USUAL.paper()),
                (int) number(kept, SCALE).orElse(Settings.USUAL.scalePercent()),
                named(kept, UNITS, UnitSystem.values(), Settings.USUAL.units()),
                recent(kept),
                window(kept),
                new SidePanels(
                        shown(kept, ADDITIONS, SidePanels.USUAL.additions()),
                        shown(kept, VALUES, SidePanels.USUAL.values())));
    }

    private static <E extends Enum<E>> E named(Properties kept, String key, E[] all, E usual) {
        String name = kept.getProperty(key, "");
        return Arrays.stream(all).filter(e -> e.name().equals(name)).findFirst().orElse(usual);
    }

    private static OptionalDouble number(Properties kept, String key) {
        try {
            double number = Double.parseDouble(kept.getProperty(key, ""));
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException none) {
            return OptionalDouble.empty();
        }
    }

    private static List<String> recent(Properties kept) {
        List<String> recent = new ArrayList<>();
        for (int n = 1; kept.containsKey(RECENT + n); n++) {
            recent.add(kept.getProperty(RECENT + n, ""));
        }
        return recent;
    }

    private static Optional<WindowFrame> window(Properties kept) {
        List<OptionalDouble> sides = FRAME.stream().map(side -> number(kept, side)).toList();
        if (sides.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Optional.empty();
        }
        List<Double> at = sides.stream().map(OptionalDouble::getAsDouble).toList();
        boolean maximized = Boolean.parseBoolean(kept.getProperty(MAXIMIZED));
        return Optional.of(new WindowFrame(at.get(0), at.get(1), at.get(2), at.get(3), maximized));
    }

    /**
     * Keeps settings.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(Settings settings) throws IOException {
        Properties kept = new Properties();
        kept.setProperty(PAPER, settings.paper().name());
        kept.setProperty(SCALE, String.valueOf(settings.scalePercent()));
        kept.setProperty(UNITS, settings.units().name());
        for (int i = 0; i < settings.recent().size(); i++) {
            kept.setProperty(RECENT + (i + 1), settings.recent().get(i));
        }
        settings.window().ifPresent(frame -> put(kept, frame));
        kept.setProperty(ADDITIONS, settings.beside().additions() ? SHOWN : AWAY);
        kept.setProperty(VALUES, settings.beside().values() ? SHOWN : AWAY);
        StringWriter text = new StringWriter();
        kept.store(text, null);
        Files.createDirectories(path.toAbsolutePath().resolveSibling("."));
        WholeFile.replace(path, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static boolean shown(Properties kept, String key, boolean usual) {
        String how = kept.getProperty(key, "");
        return how.equals(SHOWN) || (usual && !how.equals(AWAY));
    }

    private static void put(Properties kept, WindowFrame frame) {
        double[] at = {frame.x(), frame.y(), frame.width(), frame.height()};
        for (int i = 0; i < at.length; i++) {
            kept.setProperty(FRAME.get(i), String.valueOf(at[i]));
        }
        kept.setProperty(MAXIMIZED, String.valueOf(frame.maximized()));
    }
}
