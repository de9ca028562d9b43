package stillturning.files.finding;

import java.nio.file.Path;

/**
 * Something in a file that is allowed but worth a second look.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 * @param path place inside the document; empty for all of it
 */
public record FileRemark(Path file, int line, int column, String path, String words) {

    /** {@code two-battery.yaml:14:12: feeds.radio: nothing protects this run}. */
    @Override
    public String toString() {
        String place = path.isEmpty() ? "" : path + ": ";
        return file.getFileName() + ":" + line + ":" + column + ": " + place + words;
    }
}
