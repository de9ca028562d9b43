package stillturning.yaml;

/**
 * Where a node stands in its text.
 *
 * @param start index of its first char
 * @param end index after its last char, as the parser marks it; beyond the content for block lists
 *     and mappings
 * @param line of the start, from 1
 * @param column of the start, from 1, in code points
 */
public record Span(int start, int end, int line, int column) {

    Place place() {
        return new Place(line, column);
    }
}
