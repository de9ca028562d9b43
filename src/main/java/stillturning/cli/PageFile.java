package stillturning.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import stillturning.report.HtmlPage;

/** The file that a page is written to; never takes the place of somebody else's. */
record PageFile(Path path, String shown) {

    /**
     * Makes sure that nothing of the user's is lost.
     *
     * @throws Refusal if something stands there that this program did not write
     */
    void mustBeOurs() {
        if (!Files.exists(path)) {
            return;
        }
        if (!Files.isRegularFile(path) || !isOurs()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with --html, or replace it with --force");
        }
    }

    private boolean isOurs() {
        try {
            return HtmlPage.isOne(Files.readString(path));
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
            Files.writeString(path, page);
        } catch (IOException e) {
            throw new Refusal(shown + " cannot be written (" + e + "); name another file with --html");
        }
    }
}
