package stillturning.yaml;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** A value to write into a document. */
public sealed interface YamlValue {

    /** The answer for its kind. */
    <T> T fold(Function<Text, T> text, Function<Items, T> list, Function<Fields, T> map);

    /**
     * A text; quotes are added where YAML needs them. A value that is not written reads as empty.
     */
    record Text(String text) implements YamlValue {
        @Override
        public <T> T fold(
                Function<Text, T> text, Function<Items, T> list, Function<Fields, T> map) {
            return text.apply(this);
        }
    }

    /** A list. */
    record Items(List<YamlValue> items) implements YamlValue {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public <T> T fold(
                Function<Text, T> text, Function<Items, T> list, Function<Fields, T> map) {
            return list.apply(this);
        }
    }

    /** A mapping; the order of its fields is kept. */
    record Fields(List<Field> fields) implements YamlValue {
        public Fields {
            fields = List.copyOf(fields);
        }

        @Override
        public <T> T fold(
                Function<Text, T> text, Function<Items, T> list, Function<Fields, T> map) {
            return map.apply(this);
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
