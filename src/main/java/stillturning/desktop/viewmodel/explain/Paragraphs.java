package stillturning.desktop.viewmodel.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit;

/**
 * The builder's rationale, paragraph by paragraph, none of them empty.
 *
 * @param texts without line breaks
 */
record Paragraphs(List<String> texts) {

    private static final String KEY = "rationale";

    /** Of each plane, by the standard no characters. */
    private static final int LAST_TWO = 0xfffe;

    private static final Pattern BETWEEN = Pattern.compile("\\R\\h*\\R");
    private static final Pattern SPACE = Pattern.compile("\\s+");

    Paragraphs {
        texts = List.copyOf(texts);
    }

    /** Typed as one text, a blank line between two of them. */
    static Paragraphs typed(String text) {
        return new Paragraphs(
                BETWEEN.splitAsStream(text)
                        .map(t -> SPACE.matcher(t).replaceAll(" ").strip())
                        .filter(t -> !t.isEmpty())
                        .toList());
    }

    /** Those of a study's file. */
    static Paragraphs of(YamlDocument study) {
        List<String> found = new ArrayList<>();
        Optional<String> next = study.textAt(DocumentPlaces.item(KEY, 0));
        while (next.isPresent()) {
            found.add(next.get());
            next = study.textAt(DocumentPlaces.item(KEY, found.size()));
        }
        return typed(new Paragraphs(found).text());
    }

    /** As one text, a blank line between two of them. */
    String text() {
        return String.join("\n\n", texts);
    }

    private int words() {
        return texts.stream().mapToInt(t -> SPACE.split(t).length).sum();
    }

    /** What brings them into a study's file. */
    YamlEdit edit(YamlDocument study) {
        boolean there = study.places().value(KEY).isPresent();
        if (there && texts.isEmpty()) {
            return new YamlEdit.Remove(KEY);
        }
        YamlValue value = YamlValue.texts(texts.toArray(String[]::new));
        return there ? new YamlEdit.Set(KEY, value) : new YamlEdit.AddField("", KEY, value);
    }

    /** What no file and no page can hold, and where; empty if there is nothing of the kind. */
    Optional<String> unwritable() {
        for (int i = 0; i < texts.size(); i++) {
            OptionalInt bad = texts.get(i).codePoints().filter(c -> !isWritable(c)).findFirst();
            if (bad.isPresent()) {
                return Optional.of(
                        String.format(
                                Locale.ROOT,
                                "Paragraph %d holds the character U+%04X, which no page can show;"
                                        + " take it out.",
                                i + 1,
                                bad.getAsInt()));
            }
        }
        return Optional.empty();
    }

    private static boolean isWritable(int c) {
        int kind = Character.getType(c);
        boolean noCharacter = (c & LAST_TWO) == LAST_TWO || (c >= 0xfdd0 && c <= 0xfdef);
        return kind != Character.CONTROL && kind != Character.SURROGATE && !noCharacter;
    }

    /** How much that is. */
    String counted() {
        return texts.isEmpty()
                ? "nothing written yet"
                : plural(texts.size(), "paragraph") + ", " + plural(words(), "word");
    }

    private static String plural(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
