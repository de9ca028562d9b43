package stillturning.files;

/**
 * One value taken to be another, to find out whether it matters.
 *
 * @param file name of the file in the study's folder
 * @param path path of the value, as its {@link Assumption} gives it
 * @param factor what the value is multiplied by
 */
public record Variation(String file, String path, double factor) {

    /** Everything as it is. */
    public static final Variation NONE = new Variation("", "", 1);

    public Variation {
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("factor " + factor + " is not above 0");
        }
    }

    boolean hits(String inFile, String atPath) {
        return file.equals(inFile) && path.equals(atPath);
    }
}
