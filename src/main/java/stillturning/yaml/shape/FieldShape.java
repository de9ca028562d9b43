package stillturning.yaml.shape;

import java.nio.file.Path;
import java.util.Optional;
import stillturning.yaml.YamlDocument;

/**
 * One field of a mapping.
 *
 * @param defaultText YAML text that stands for it where it is not written
 */
record FieldShape(
        String key,
        Shape shape,
        boolean optional,
        Optional<String> defaultText,
        Optional<String> words) {

    /** A field that can be taken out, since a person put it there. */
    static FieldShape chosen(String name, Shape shape) {
        return new FieldShape(name, shape, true, Optional.empty(), Optional.empty());
    }

    boolean required() {
        return !optional && defaultText.isEmpty();
    }

    /** The same field, which need not be written. */
    FieldShape leftOpen() {
        return new FieldShape(key, shape, true, Optional.empty(), words);
    }

    /** What the record's component holds for a value that is written. */
    Object component(Object value) {
        return optional ? Optional.of(value) : value;
    }

    /**
     * The value of the default text; a default that cannot be read is a fault of the record type.
     */
    Object defaultValue() {
        String text = defaultText.orElseThrow();
        YamlDocument document = YamlDocument.of(Path.of("default"), text);
        Binding binding = new Binding(document.places());
        Optional<?> value = document.root().flatMap(tree -> shape.bind(tree, key, binding));
        if (value.isEmpty()) {
            throw new IllegalArgumentException(
                    "default \"" + text + "\": " + document.problems() + binding.problems());
        }
        return value.get();
    }
}
