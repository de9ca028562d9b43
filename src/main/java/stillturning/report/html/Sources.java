package stillturning.report.html;

import java.util.List;

/**
 * Where a study's values come from.
 *
 * @param fingerprint of the files that were read
 * @param notes one for each value, in the order of the files
 */
public record Sources(String fingerprint, List<SourceNote> notes) {

    /**
     * Where one value comes from.
     *
     * @param path place inside the file
     * @param text the value as written
     * @param origin "guess", "data sheet", ... ; empty for a value stated without a source
     * @param note what stands beside it; may be empty
     */
    public record SourceNote(String file, String path, String text, String origin, String note) {}

    public Sources {
        notes = List.copyOf(notes);
    }
}
