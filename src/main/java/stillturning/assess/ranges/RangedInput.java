package stillturning.assess.ranges;

/**
 * A value that may be anywhere in its range.
 *
 * @param file where it is written
 * @param name what it is called there
 * @param text the value as written
 */
public record RangedInput(String file, String name, String text) {}
