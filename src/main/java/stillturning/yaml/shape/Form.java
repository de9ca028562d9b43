package stillturning.yaml.shape;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The fields of one place of a document, with what is written in each.
 *
 * @param path the place
 * @param words what stands there; empty if nothing is said of it
 * @param kind the word that says which of several kinds stands there, with its key
 * @param fields what may be written, in the order of the schema; of a list or of names that people
 *     choose, what is written
 * @param further one more item of a list, or one more value under a name
 */
public record Form(
        String path,
        String words,
        Optional<KindChoice> kind,
        List<FormField> fields,
        Optional<FormField> further) {

    /**
     * Which of several kinds something is.
     *
     * @param key the key that says it
     * @param word what stands there
     * @param choices what may stand there
     */
    public record KindChoice(String key, String word, List<String> choices) {
        public KindChoice {
            choices = List.copyOf(choices);
        }
    }

    public Form {
        fields = List.copyOf(fields);
    }

    /** The same form with every field changed, that for one more included. */
    public Form with(UnaryOperator<FormField> change) {
        return new Form(
                path, words, kind, fields.stream().map(change).toList(), further.map(change));
    }

    /** The field of this name. */
    public Optional<FormField> field(String key) {
        return fields.stream().filter(f -> f.key().equals(key)).findFirst();
    }
}
