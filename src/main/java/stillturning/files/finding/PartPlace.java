package stillturning.files.finding;

import java.nio.file.Path;

/**
 * Where a part is asked for.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 * @param path place inside the document: the part itself, or the run that makes it
 * @param offset where in the run's text it stands; 0 where the run does not write it
 */
public record PartPlace(Path file, int line, int column, String path, int offset) {

    /** {@code two-battery.yaml:14:12}. */
    @Override
    public String toString() {
        return file.getFileName() + ":" + line + ":" + column;
    }
}
