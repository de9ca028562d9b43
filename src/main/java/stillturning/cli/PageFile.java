package stillturning.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import stillturning.files.WholeFile;
import stillturning.report.Cautions;

/**
 * The file that a page is written to; never takes the place of somebody else's.
 *
 * @param shown the path as the user would write it
 */
record PageFile(Path path, String shown) {

    /** Pages are far smaller (bytes). */
    private static final long LARGEST = 100_000_000;

    /** Stands on every page. */
    private static final String OURS = Cautions.inFull(false).get(0);

    /**
     * Makes sure that nothing of the user's is lost.
     *
     * @throws Refusal if something stands there that this program did not write
     */
    void mustBeOurs() {
        if (Files.exists(path) && !isOurs()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with --html, or replace it with --force");
        }
    }

    private boolean isOurs() {
        try {
            return Files.isRegularFile(path)
                    && Files.size(path) <= LARGEST
                    && Files.readString(path).contains(OURS);
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Writes the page.
     *
     * @throws Refusal if the file cannot be written
     */
    void write(String page) {
        try {
            WholeFile.replace(path, page.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new Refusal(
                    shown + " cannot be written (" + e + "); name another file with --html");
        }
    }
}
