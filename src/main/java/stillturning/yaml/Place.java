package stillturning.yaml;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1, counted in characters
 */
public record Place(int line, int column) {}
