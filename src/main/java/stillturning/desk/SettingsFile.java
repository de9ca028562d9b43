package stillturning.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.files.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The file that settings are kept in, between one start and the next.
 *
 * @param path where it is
 */
public record SettingsFile(Path path) {

    private static final String FOLDER = "stillturning";
    private static final String NAME = "settings.json";

    private static final JsonMapper JSON =
            JsonMapper.builder().disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

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
        try {
            Settings read = JSON.readValue(Files.readAllBytes(path), Settings.class);
            return Optional.ofNullable(read).orElse(Settings.USUAL);
        } catch (IOException | JacksonException | IllegalArgumentException unreadable) {
            return Settings.USUAL;
        }
    }

    /**
     * Keeps settings.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(Settings settings) throws IOException {
        Files.createDirectories(path.toAbsolutePath().resolveSibling("."));
        WholeFile.replace(path, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(settings));
    }
}
