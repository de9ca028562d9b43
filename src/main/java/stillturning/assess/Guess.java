package stillturning.assess;

/**
 * A value that somebody guessed.
 *
 * @param source where it stands, as its owner calls that
 * @param name what it is, unique in the source
 * @param value with its unit
 */
public record Guess(String source, String name, String value) {}
