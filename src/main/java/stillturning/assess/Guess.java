package stillturning.assess;

/**
 * A value that somebody guessed.
 *
 * @param source where it stands, as its owner calls that
 * @param name what it is, unique in the source
 * @param value with its unit
 * @param finding how to find it out; empty where nobody has said
 */
public record Guess(String source, String name, String value, String finding) {

    /** One of which nobody has said how to find it out. */
    public Guess(String source, String name, String value) {
        this(source, name, value, "");
    }
}
