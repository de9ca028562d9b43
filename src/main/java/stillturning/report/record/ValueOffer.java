package stillturning.report.record;

/**
 * A value of the study that could be replaced by a measured one.
 *
 * @param file name of the file in the study's folder
 * @param mapping path of what it is in
 * @param key of it there
 * @param before as it is, with its origin; empty where the file does not write it
 * @param after as it would be
 */
public record ValueOffer(String file, String mapping, String key, String before, String after) {

    /** Whether it would change anything. */
    public boolean changes() {
        return !before.equals(after);
    }
}
