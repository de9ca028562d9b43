package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.yaml.disk.FileClaim;
import stillturning.yaml.disk.WholeFile;

/** A file that holds the unsaved work on one study, one for each program that works on it. */
final class Journal {

    private static final String ENDING = ".journal";
    private static final String LOCK = ".lock";
    private static final int KEY_CHARS = 20;
    private static final int MOST_BYTES = 500_000_000;

    private final Path file;
    private final FileClaim claim;

    private Journal(Path file, FileClaim claim) {
        this.file = file;
        this.claim = claim;
    }

    /** A journal of one's own; nothing is written yet. */
    static Journal begin(Path folder, Path study) throws IOException {
        Files.createDirectories(folder);
        String key = key(study);
        long process = ProcessHandle.current().pid();
        for (int count = 1; ; count++) {
            Path file = folder.resolve(key + "-" + process + "-" + count + ENDING);
            Optional<FileClaim> claim =
                    Files.exists(file) ? Optional.empty() : FileClaim.on(lock(file));
            if (claim.isPresent()) {
                return new Journal(file, claim.get());
            }
        }
    }

    /** Journals on a study that nobody holds any more, the latest last; they are held from now. */
    static List<Journal> left(Path folder, Path study) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all =
                Files.newDirectoryStream(folder, key(study) + "-*" + ENDING)) {
            all.forEach(files::add);
        }
        files.sort(null);
        List<Journal> left = new ArrayList<>();
        for (Path file : files) {
            Optional<FileClaim> claim = FileClaim.on(lock(file));
            if (claim.isPresent() && Files.exists(file)) {
                left.add(new Journal(file, claim.get()));
            } else if (claim.isPresent()) {
                claim.get().end();
            }
        }
        return left;
    }

    private static Path lock(Path file) {
        return file.resolveSibling(Listing.nameOf(file) + LOCK);
    }

    private static String key(Path study) throws IOException {
        try {
            byte[] path = study.toRealPath().toString().getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(path);
            return HexFormat.of().formatHex(digest).substring(0, KEY_CHARS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private Path beside(String ending) {
        return file.resolveSibling(Listing.nameOf(file) + ending);
    }

    /** What stands in it. */
    JournalText read() throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException("the unsaved work is damaged");
        }
        return JournalText.read(Files.readAllBytes(file));
    }

    /** Writes it again, whole or not at all. */
    void write(JournalText text) throws IOException {
        WholeFile.replace(file, text.bytes());
    }

    /** Takes what stands in it away; it can be written again. */
    void clear() throws IOException {
        Files.deleteIfExists(file);
    }

    /**
     * Takes it away for good.
     *
     * @param failed hears why it could not be done
     */
    void end(Consumer<String> failed) {
        try {
            clear();
            claim.end();
        } catch (IOException refused) {
            failed.accept("kept work cannot be taken away: " + refused);
        }
    }

    /**
     * Lets somebody else have it, with what stands in it.
     *
     * @param failed hears why it could not be done
     */
    void letGo(Consumer<String> failed) {
        try {
            claim.release();
        } catch (IOException refused) {
            failed.accept("kept work cannot be let go: " + refused);
        }
    }

    /** Moves what cannot be read aside, so that it is neither offered again nor lost. */
    void putAside() throws IOException {
        Files.move(file, beside(".damaged"), StandardCopyOption.REPLACE_EXISTING);
        claim.end();
    }
}
