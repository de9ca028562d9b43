package stillturning.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import stillturning.yaml.disk.WholeFile;

/**
 * Replaces a file's content so that at every instant either the old or the new content is there.
 */
final class FileReplacement {

    private static final String BACKUP_MARK = "~";

    private FileReplacement() {}

    static String fingerprint(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * Writes the new content; the old one stays beside it under the same name with a {@code ~}
     * behind.
     *
     * @param expected fingerprint of what must be there now; absent if no file may be there
     * @throws ChangedOnDisk if something else is there
     */
    static void write(Path file, byte[] bytes, Optional<String> expected) throws IOException {
        Path real = real(file);
        Optional<byte[]> before = checked(file, real, expected);
        if (before.isPresent()) {
            WholeFile.replace(backup(real), before.get(), real);
        }
        WholeFile.replace(real, bytes);
    }

    /**
     * Takes a file away, and leaves its content under the same name with a {@code ~} behind.
     *
     * @param expected fingerprint of what must be there now; absent if no file may be there
     * @throws ChangedOnDisk if something else is there
     */
    static void remove(Path file, Optional<String> expected) throws IOException {
        Path real = real(file);
        Optional<byte[]> before = checked(file, real, expected);
        if (before.isPresent()) {
            WholeFile.replace(backup(real), before.get(), real);
            Files.delete(file);
        }
    }

    private static Path real(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    }

    private static Path backup(Path real) {
        return real.resolveSibling(real.getFileName() + BACKUP_MARK);
    }

    private static Optional<byte[]> checked(Path file, Path real, Optional<String> expected)
            throws IOException {
        Optional<byte[]> before = present(real);
        if (!before.map(FileReplacement::fingerprint).equals(expected)) {
            throw new ChangedOnDisk(
                    file,
                    expected.isEmpty() ? "is there already" : "was changed since it was read");
        }
        return before;
    }

    private static Optional<byte[]> present(Path file) throws IOException {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (NoSuchFileException absent) {
            return Optional.empty();
        }
    }
}
