package stillturning.desktop.draft;

import java.time.Instant;
import java.util.List;

/**
 * Unsaved work of a program that ended without saving it.
 *
 * @param when it was kept
 */
public record Recovered(Instant when, List<UnsavedFile> files) {

    /**
     * What is unsaved in one file.
     *
     * @param deleted whether the work was to delete the file
     * @param diskChanged whether the file on disk is another one than the work began with
     */
    public record UnsavedFile(String file, boolean deleted, boolean diskChanged) {}

    public Recovered {
        files = List.copyOf(files);
    }
}
