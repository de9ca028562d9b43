package stillturning.yaml.disk;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes a folder with its files: all of them, or none. */
public final class WholeFolder {

    private static final int MOST_NAMED = 3;

    private WholeFolder() {}

    /**
     * Makes a folder where none is, or fills one that is empty.
     *
     * @param files content by name
     * @throws DirectoryNotEmptyException if something is in it; its message names the first of it
     * @throws IOException if it cannot be written; then nothing of it is there
     */
    public static void create(Path folder, Map<String, byte[]> files) throws IOException {
        Path whole = folder.toAbsolutePath();
        Files.createDirectories(TemporaryFile.folder(whole));
        TemporaryFile.clearLeftBeside(whole);
        for (String name : files.keySet()) {
            TemporaryFile.clearLeftBeside(whole.resolve(name));
        }
        boolean there = Files.isDirectory(whole);
        List<String> inside = there ? inside(whole) : List.of();
        if (!inside.isEmpty()) {
            throw new DirectoryNotEmptyException(String.join(", ", inside));
        }
        // the user may stand in an empty folder, which would vanish under him if another took its
        // place
        Path draft = there ? whole : Files.createDirectory(TemporaryFile.fresh(whole));
        boolean done = false;
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                WholeFile.replace(draft.resolve(file.getKey()), file.getValue());
            }
            if (!there) {
                Files.move(draft, whole, StandardCopyOption.ATOMIC_MOVE);
            }
            done = true;
        } finally {
            if (!done) {
                clear(draft, files);
                if (!there) {
                    Files.deleteIfExists(draft);
                }
            }
        }
    }

    private static List<String> inside(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path file : all) {
                names.add(String.valueOf(file.getFileName()));
            }
        }
        names.sort(null);
        return names.size() <= MOST_NAMED
                ? names
                : List.of(names.get(0), names.get(1), (names.size() - 2) + " more");
    }

    private static void clear(Path folder, Map<String, byte[]> files) throws IOException {
        for (String name : files.keySet()) {
            Files.deleteIfExists(folder.resolve(name));
        }
    }
}
