package stillturning.yaml.shape;

import java.util.Map;
import java.util.Optional;
import stillturning.yaml.Span;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

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

    /** How a person may be asked for it. */
    FieldInput input();

    /** What a text from a form stands for, with its place in that text. */
    default Tree tree(String text) {
        return new Tree.Leaf(new Span(0, text.length(), 1, 1), text, Tree.Style.PLAIN);
    }

    /** A value that says nothing, for a half-written file; absent where none can be had. */
    default Optional<?> blank() {
        return Optional.empty();
    }

    /** JSON Schema of it. */
    Map<String, Object> schema(SchemaDefinitions definitions);
}
