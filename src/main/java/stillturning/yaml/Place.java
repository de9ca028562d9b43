package stillturning.yaml;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 */
public record Place(int line, int column) {

    /** Behind the last character of a text. */
    static Place endOf(String text) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        String last = lines[lines.length - 1];
        return new Place(lines.length, last.codePointCount(0, last.length()) + 1);
    }
}
