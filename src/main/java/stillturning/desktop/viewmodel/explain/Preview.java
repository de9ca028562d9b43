package stillturning.desktop.viewmodel.explain;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The file from which the page is shown; gone when the program ends. */
final class Preview {

    private Optional<Path> folder = Optional.empty();

    /**
     * Puts a page there, in the place of the one before.
     *
     * @throws IOException if it cannot be written
     */
    synchronized URI put(String name, String html) throws IOException {
        if (folder.isEmpty()) {
            Path made = Files.createTempDirectory("stillturning-");
            made.toFile().deleteOnExit();
            folder = Optional.of(made);
        }
        Path file = folder.get().resolve(name);
        Files.writeString(file, html);
        file.toFile().deleteOnExit();
        return file.toUri();
    }
}
