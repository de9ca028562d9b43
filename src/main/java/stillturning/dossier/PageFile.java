package stillturning.dossier;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import stillturning.report.Cautions;
import stillturning.report.pdf.PdfSetter;
import stillturning.yaml.disk.WholeFile;

/** A file that a page is written to; knows whether it would take the place of somebody else's. */
public record PageFile(Path path) {

    /** Pages are far smaller (bytes). */
    private static final long LARGEST = 100_000_000;

    /** Stands on every page. */
    private static final String OURS = Cautions.inFull(false).get(0);

    /** Whether something stands there that this program did not write. */
    public boolean isAnothers() {
        return Files.exists(path) && !isOurs();
    }

    private boolean isOurs() {
        try {
            return Files.isRegularFile(path)
                    && Files.size(path) <= LARGEST
                    && bearsOurName(
                            new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            return false;
        }
    }

    /** Plain letters read the same in every encoding that a page or a paper is written in. */
    private static boolean bearsOurName(String text) {
        return text.contains(OURS) || text.contains(PdfSetter.MADE_BY);
    }

    /**
     * Writes the page, whole or not at all.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(String page) throws IOException {
        write(page.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes the bytes of a page or a paper, whole or not at all.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(byte[] bytes) throws IOException {
        WholeFile.replace(path, bytes);
    }
}
