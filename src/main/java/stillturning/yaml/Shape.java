package stillturning.yaml;

import java.util.Map;
import java.util.Optional;

/** What may stand at one place of a document. */
sealed interface Shape
        permits ChoiceShape,
                GaugeShape,
                ListShape,
                MapShape,
                MeasuredShape,
                NumberShape,
                RecordShape,
                TextShape,
                UnionShape,
                WrittenShape,
                YesNoShape {

    /** The value, or absent after at least one problem was told. */
    Optional<?> bind(Tree tree, String path, Binding binding);

    /** A short text that would be right, in flow style. */
    String example();

    /** What stands there, with article: "a list". */
    default String form() {
        return "a single text";
    }

    /** JSON Schema of it. */
    Map<String, Object> schema(SchemaDefinitions definitions);
}
