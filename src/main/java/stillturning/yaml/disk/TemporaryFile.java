package stillturning.yaml.disk;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a file is written before it takes its place: hidden beside it, one for each writing. */
final class TemporaryFile {

    private static final AtomicLong COUNT = new AtomicLong();
    private static final String ENDING = ".new";
    private static final Pattern WRITER = Pattern.compile("([0-9]{1,18})-[0-9]+\\.new");

    private TemporaryFile() {}

    static Path folder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return folder == null ? file.toAbsolutePath() : folder;
    }

    /** A name that no other writer has. */
    static Path fresh(Path file) {
        long process = ProcessHandle.current().pid();
        return folder(file).resolve(start(file) + process + "-" + COUNT.incrementAndGet() + ENDING);
    }

    private static String start(Path file) {
        return "." + file.getFileName() + ".";
    }

    /** Takes away what writers of this file left that no longer run. */
    static void clearLeftBeside(Path file) throws IOException {
        Path folder = folder(file);
        if (!Files.isDirectory(folder)) {
            return;
        }
        String start = start(file);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, f -> isLeft(f, start))) {
            for (Path left : all) {
                if (Files.isDirectory(left, LinkOption.NOFOLLOW_LINKS)) {
                    empty(left);
                }
                Files.deleteIfExists(left);
            }
        }
    }

    private static void empty(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static boolean isLeft(Path file, String start) {
        String name = String.valueOf(file.getFileName());
        if (!name.startsWith(start)) {
            return false;
        }
        Matcher writer = WRITER.matcher(name.substring(start.length()));
        return writer.matches() && ProcessHandle.of(Long.parseLong(writer.group(1))).isEmpty();
    }
}
