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

    boolean required() {
        return !optional && defaultText.isEmpty();
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
