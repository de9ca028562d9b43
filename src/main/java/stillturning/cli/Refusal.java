package stillturning.cli;

/** The user's mistake, told in words that say what would be right. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String words;

    Refusal(String words) {
        super(words);
        this.words = words;
    }

    @Override
    public String getMessage() {
        return words;
    }
}
