package stillturning.files.entry;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import stillturning.yaml.BindResult;
import stillturning.yaml.YamlDocument;

/** Files that ship with the program. */
final class Shipped {

    private static final String FOLDER = "/stillturning/files/";

    private Shipped() {}

    /**
     * Reads one.
     *
     * @throws IllegalStateException if there is a mistake in it
     */
    static <T> T read(String name, Class<T> type) {
        BindResult<T> bound = FileNotations.binder().bind(document(name), type);
        return bound.value()
                .orElseThrow(() -> new IllegalStateException(String.valueOf(bound.problems())));
    }

    /** The text of one. */
    static YamlDocument document(String name) {
        String file = FOLDER + name;
        return YamlDocument.of(Path.of(file), text(file));
    }

    private static String text(String file) {
        try (InputStream in = requireNonNull(Shipped.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
