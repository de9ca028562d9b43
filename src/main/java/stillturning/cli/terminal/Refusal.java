package stillturning.cli.terminal;

import java.io.IOException;

/** The user's mistake, told in words that say what would be right. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String words;

    public Refusal(String words) {
        super(words);
        this.words = words;
    }

    @Override
    public String getMessage() {
        return words;
    }

    /** A file that the user named cannot be written; the remedy names what to name instead. */
    public static Refusal unwritten(String shown, IOException why, String remedy) {
        return new Refusal(shown + " cannot be written (" + why + "); name another " + remedy);
    }
}
