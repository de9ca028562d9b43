package stillturning.cli.terminal;

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
}
