package stillturning.desktop.viewmodel;

import stillturning.files.ReadStudy;
import stillturning.report.explored.ExploredFront;

/**
 * What the last search for simpler layouts found.
 *
 * @param fingerprint of the texts that it was found from
 */
public record FoundLayouts(ExploredFront front, String fingerprint) {

    /** Whether it was found from what the texts say now. */
    public boolean isOf(ReadStudy read) {
        return fingerprint.equals(read.fingerprint());
    }
}
