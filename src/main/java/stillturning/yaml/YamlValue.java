package stillturning.yaml;

import java.util.Arrays;
import java.util.List;

/** A value to write into a document. */
public sealed interface YamlValue {

    /**
     * A text; quotes are added where YAML needs them. A value that is not written reads as empty.
     */
    record Text(String text) implements YamlValue {}

    /** A list. */
    record Items(List<YamlValue> items) implements YamlValue {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A mapping; the order of its fields is kept. */
    record Fields(List<Field> fields) implements YamlValue {
        public Fields {
            fields = List.copyOf(fields);
        }
    }

    /** One key of a mapping with its value. */
    record Field(String key, YamlValue value) {}

    /** A text. */
    static YamlValue text(String text) {
        return new Text(text);
    }

    /** A list of texts. */
    static YamlValue texts(String... texts) {
        return new Items(Arrays.stream(texts).map(YamlValue::text).toList());
    }

    /** A mapping. */
    static YamlValue fields(Field... fields) {
        return new Fields(List.of(fields));
    }

    /** A key with a text. */
    static Field field(String key, String text) {
        return new Field(key, new Text(text));
    }
}
