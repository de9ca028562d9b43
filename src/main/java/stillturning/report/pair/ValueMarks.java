package stillturning.report.pair;

import java.util.List;

/**
 * How well the values of two candidates' own files are known: what is a guess in one of them and
 * measured, stated or from a data sheet in the other makes a difference that is none of layout.
 *
 * @param guesses that the first's own file states
 * @param otherGuesses that the second's own file states
 * @param onlyGuessed values that both files have, a guess in the first alone, in plain words
 * @param onlyGuessedByOther the same, a guess in the second alone
 */
public record ValueMarks(
        int guesses, int otherGuesses, List<String> onlyGuessed, List<String> onlyGuessedByOther) {

    private static final int NAMED = 4;

    public ValueMarks {
        onlyGuessed = List.copyOf(onlyGuessed);
        onlyGuessedByOther = List.copyOf(onlyGuessedByOther);
    }

    /** Whether a value is a guess in one of them and known in the other. */
    public boolean unlike() {
        return !onlyGuessed.isEmpty() || !onlyGuessedByOther.isEmpty();
    }

    /**
     * What that comes to, as a clause.
     *
     * @param one what the first is called
     * @param other what the second is called
     */
    public String words(String one, String other) {
        String counts =
                "guesses in their own files: "
                        + (guesses == otherGuesses
                                ? guesses + " each"
                                : guesses + " and " + otherGuesses);
        return counts + only(onlyGuessed, one, other) + only(onlyGuessedByOther, other, one);
    }

    private static String only(List<String> values, String here, String there) {
        return values.isEmpty()
                ? ""
                : "; guessed in "
                        + here
                        + ", known in "
                        + there
                        + ": "
                        + PairBlocks.some(values, NAMED);
    }
}
