package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.disk.WholeFile;

/**
 * The files of a study as they are on disk at one moment.
 *
 * @param unread names of files that are there and cannot be read
 */
record Listing(
        SortedMap<String, YamlDocument> documents, Set<String> unread, List<Problem> problems) {

    private static final int MOST_FILES = 100;

    /** Reads every file of the study; what cannot be read becomes a problem. */
    static Listing of(Path folder) throws IOException {
        Listing listing = new Listing(new TreeMap<>(), new TreeSet<>(), new ArrayList<>());
        for (Path path : paths(folder)) {
            listing.read(path);
        }
        return listing;
    }

    /**
     * Takes away what interrupted savings left hidden beside the files. Reading is no writing: what
     * cannot be taken away stays for the next one to try.
     */
    void clearWhatWasLeft() {
        for (YamlDocument document : documents.values()) {
            try {
                WholeFile.clear(document.file());
            } catch (IOException stays) {
                // the text itself is whole; only a hidden copy is left
            }
        }
    }

    /** Time and length of each file, by its name. */
    static Map<String, String> stamp(Path folder) throws IOException {
        Map<String, String> stamp = new TreeMap<>();
        for (Path path : paths(folder)) {
            stamp.put(nameOf(path), Files.getLastModifiedTime(path) + " " + Files.size(path));
        }
        return stamp;
    }

    private static List<Path> paths(Path folder) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> all =
                Files.newDirectoryStream(folder, "*" + EditedFiles.ENDING)) {
            for (Path path : all) {
                if (!nameOf(path).startsWith(".")) {
                    paths.add(path);
                }
            }
        } catch (DirectoryIteratorException unreadable) {
            throw new IOException(
                    "the folder cannot be read: " + unreadable.getMessage(), unreadable);
        }
        if (paths.size() > MOST_FILES) {
            throw new IOException(
                    folder + " holds more than " + MOST_FILES + " files; split the study");
        }
        return paths;
    }

    private void read(Path path) {
        if (!Files.isRegularFile(path)) {
            fail(path, "this is no file that can be read", "take it out of the folder");
            return;
        }
        try {
            documents.put(nameOf(path), YamlDocument.read(path));
        } catch (IOException unreadable) {
            fail(path, "the file cannot be read: " + unreadable, "look at its permissions");
        }
    }

    private void fail(Path path, String wrong, String right) {
        unread.add(nameOf(path));
        problems.add(new Problem(path, 1, 1, "", wrong, right));
    }

    /** The file as it is on disk, if it is there and can be read. */
    Optional<YamlDocument> document(String name) {
        return Optional.ofNullable(documents.get(name));
    }

    static String nameOf(Path path) {
        return String.valueOf(path.getFileName());
    }
}
