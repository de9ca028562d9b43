package stillturning.files;

/**
 * Where a message belongs.
 *
 * @param path path in the document
 * @param offset index of a char in the text there; {@link #KEY} for its key
 */
record Spot(String path, int offset) {

    private static final int KEY = -1;

    static Spot atKey(String path) {
        return new Spot(path, KEY);
    }

    boolean isKey() {
        return offset == KEY;
    }
}
