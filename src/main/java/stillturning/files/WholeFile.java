package stillturning.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes files that this program makes, so that at every instant the old or the new one is there.
 */
public final class WholeFile {

    private WholeFile() {}

    /**
     * Writes a file in the place of what was there.
     *
     * @throws IOException if it cannot be written; what was there is then still there
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        Path whole = file.toAbsolutePath();
        Path draft = whole.resolveSibling("." + whole.getFileName() + ".new");
        try {
            Files.write(draft, bytes);
            move(draft, whole);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException weak) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
