package stillturning.yaml;

import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 */
public record Place(int line, int column) {

    /** What the parser points at: it counts on where a text breaks off in a line. */
    static Place of(Mark mark, Place end) {
        int line = mark.getLine() + 1;
        return line > end.line ? end : new Place(line, mark.getColumn() + 1);
    }

    /** Behind the last character of a text. */
    static Place endOf(String text) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        String last = lines[lines.length - 1];
        return new Place(lines.length, last.codePointCount(0, last.length()) + 1);
    }
}
