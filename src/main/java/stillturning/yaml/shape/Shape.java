package stillturning.yaml.shape;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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

    /** What stands between several of these on one line. */
    default String between() {
        return ",";
    }

    /** What stands between its items on one line. */
    default String separator() {
        return ",";
    }

    /** A short text that stands for it inside another example. */
    default String brief() {
        return example();
    }

    /** What may stand in each of its entries or items, if they are all alike. */
    default Optional<Shape> member() {
        return Optional.empty();
    }

    /** The form of its entries or items, if they are all alike. */
    default Optional<Form> membersForm(Optional<Tree> written, String path) {
        return Optional.empty();
    }

    /**
     * The record that stands there, if it can be told which.
     *
     * @param textAt the text that is written under a key
     */
    default Optional<RecordShape> record(Function<String, Optional<String>> textAt) {
        return Optional.empty();
    }

    /** What a text from a form stands for, with its place in that text. */
    default Tree tree(String text) {
        return new Tree.LeafNode(new Span(0, text.length(), 1, 1), text, Tree.Style.PLAIN);
    }

    /** A value that says nothing, for a half-written file; absent where none can be had. */
    default Optional<?> blank() {
        return Optional.empty();
    }

    /** JSON Schema of it. */
    Map<String, Object> schema(SchemaDefinitions definitions);
}
