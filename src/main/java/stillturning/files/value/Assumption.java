package stillturning.files.value;

import java.util.Optional;
import stillturning.files.value.Variation.ValuePlace;
import stillturning.yaml.notation.Origin;

/**
 * A value that a study rests on.
 *
 * @param file name of the file in the study's folder
 * @param path place inside the document; the place where one would write it if it is not written
 * @param text the value with its unit
 * @param origin where it comes from
 * @param note what else is said about that
 */
public record Assumption(String file, String path, String text, Origin origin, String note) {

    private static final String CLASSES = "classes.";

    /** Where it stands. */
    public ValuePlace place() {
        return new ValuePlace(file, path);
    }

    /** Whether somebody guessed it, in the file or in the catalogue. */
    public boolean isGuess() {
        return isGuess(origin, note);
    }

    /** Whether it is a choice among words, so that nothing is a little more or less than it. */
    public boolean isWord() {
        return Character.isLetter(text.charAt(0));
    }

    /** The kind of part whose class it supposes, if it does. */
    public Optional<String> supposedKind() {
        return isWord() && path.startsWith(CLASSES)
                ? Optional.of(path.substring(CLASSES.length()))
                : Optional.empty();
    }

    static boolean isGuess(Origin origin, String note) {
        return origin == Origin.GUESSED
                || (origin == Origin.CATALOGUE && note.contains(": " + Origin.GUESSED.words()));
    }
}
