package stillturning.yaml.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;
import stillturning.yaml.notation.TextForm;

/**
 * A type that is read from one text.
 *
 * @param longForm how else it may be written
 */
record WrittenShape(Class<?> type, TextNotation notation, Optional<Shape> longForm)
        implements Shape {

    @Override
    public Optional<RecordShape> record(Function<String, Optional<String>> textAt) {
        return longForm.flatMap(shape -> shape.record(textAt));
    }

    /** One-line notations have commas of their own. */
    @Override
    public String between() {
        return ";";
    }

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        if (!(tree instanceof Tree.LeafNode) && longForm.isPresent()) {
            return longForm.get().bind(tree, path, binding);
        }
        return binding.leaf(tree, path, this).flatMap(leaf -> read(leaf, path, binding));
    }

    private Optional<?> read(Tree.LeafNode leaf, String path, Binding binding) {
        AtomicInteger count = new AtomicInteger();
        TextForm.FaultReceiver faults = binding.inside(leaf, path);
        Optional<?> value =
                notation.form()
                        .read(
                                leaf.text(),
                                (offset, wrong, right) -> {
                                    count.incrementAndGet();
                                    faults.at(offset, wrong, right);
                                });
        if (value.isEmpty() && count.get() == 0) {
            throw new IllegalStateException(
                    "the text form of "
                            + type
                            + " neither read \""
                            + leaf.text()
                            + "\" nor told a fault");
        }
        return value;
    }

    @Override
    public FieldInput input() {
        return new FieldInput.NotationText(example());
    }

    @Override
    public String example() {
        return notation.example().or(() -> longForm.map(Shape::example)).orElse("a text");
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        Map<String, Object> text = new TextShape().schema(definitions);
        return longForm.isEmpty()
                ? text
                : SchemaJson.object("anyOf", List.of(text, longForm.get().schema(definitions)));
    }
}
