package stillturning.files.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** What stands in a file, by key, whatever it means. */
public record WrittenKeys(YamlValue value) {

    private static final YamlValue NOTHING = YamlValue.fields();

    /** All that stands in a document; nothing if it cannot be read. */
    public static WrittenKeys in(YamlDocument document) {
        return new WrittenKeys(document.value().orElse(NOTHING));
    }

    /** What stands under a key; nothing if it is not there. */
    public WrittenKeys under(String key) {
        return new WrittenKeys(Optional.ofNullable(fields().get(key)).orElse(NOTHING));
    }

    /** The keys of a mapping with their values, in order. */
    public Map<String, YamlValue> fields() {
        Map<String, YamlValue> fields = new LinkedHashMap<>();
        if (value instanceof YamlValue.Fields all) {
            all.fields().forEach(f -> fields.put(f.key(), f.value()));
        }
        return fields;
    }

    /** The keys of a mapping that lead to plain texts. */
    public Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        fields().forEach(
                        (key, field) -> {
                            if (field instanceof YamlValue.Text text) {
                                texts.put(key, text.text());
                            }
                        });
        return texts;
    }

    /** The plain text under a key. */
    public Optional<String> text(String key) {
        return Optional.ofNullable(texts().get(key));
    }

    /** The items of a list, in order. */
    public List<WrittenKeys> items() {
        return value instanceof YamlValue.Items list
                ? list.items().stream().map(WrittenKeys::new).toList()
                : List.of();
    }

    /** The items of a list of texts; what is no text counts as empty. */
    public List<String> itemTexts() {
        return items().stream()
                .map(i -> i.value instanceof YamlValue.Text text ? text.text() : "")
                .toList();
    }
}
