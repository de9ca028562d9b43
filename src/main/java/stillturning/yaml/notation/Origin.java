package stillturning.yaml.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Where a value comes from. */
public enum Origin {
    /** Somebody measured it. */
    MEASURED("measured"),
    /** From the maker's data. */
    DATA_SHEET("data sheet"),
    /** From the program's catalogue. */
    CATALOGUE("catalogue"),
    /** A guess. */
    GUESSED("guess"),
    /** Worked out by the program. */
    AUTOMATIC("automatic"),
    /** Written without saying where it comes from. */
    STATED("");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /** As written in a file; empty for {@link #STATED}. */
    public String words() {
        return words;
    }

    static Optional<Origin> called(String text) {
        String plain = text.equals("guessed") ? GUESSED.words : text;
        return Arrays.stream(values())
                .filter(o -> o != STATED && o.words.equals(plain))
                .findFirst();
    }

    static List<String> choices() {
        return Arrays.stream(values()).filter(o -> o != STATED).map(Origin::words).toList();
    }
}
