package stillturning.files.finding;

import java.nio.file.Path;
import java.util.List;

/**
 * Something to be said about a file, and the parts that it is about.
 *
 * @param mistake whether nothing can be computed before it is mended
 * @param line from 1
 * @param column from 1, counted in characters
 * @param path place inside the document; empty for the whole
 * @param words what is wrong, or worth a second look
 * @param mend what would be right; empty for a remark
 * @param parts the parts that it is about, as far as it is about parts
 */
public record FileFinding(
        boolean mistake,
        Path file,
        int line,
        int column,
        String path,
        String words,
        String mend,
        List<String> parts) {
    public FileFinding {
        parts = List.copyOf(parts);
    }

    /** What is wrong and what would be right, in one line. */
    public String sentence() {
        return mend.isEmpty() ? words : words + "; " + mend;
    }
}
