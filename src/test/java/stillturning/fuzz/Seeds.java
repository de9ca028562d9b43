package stillturning.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import stillturning.yaml.YamlDocument;

/** The sound texts that spoiling starts from, by door and name. */
public final class Seeds {

    private Seeds() {}

    /** A seed, such as {@code files.StudyFuzz/bare.yaml}. */
    public static String text(String name) {
        try (InputStream in = Objects.requireNonNull(Seeds.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A seed as a file of one folder. */
    public static YamlDocument document(String name, String file) {
        return YamlDocument.of(Path.of("fuzzed", file), text(name));
    }
}
