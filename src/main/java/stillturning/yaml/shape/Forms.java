package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;

/** The forms of one type of document, made of the same shapes as its reader and its schema. */
public final class Forms {

    private final Shape root;

    /**
     * The forms of documents that a binder reads as a type.
     *
     * @throws IllegalArgumentException if the type is none that can be bound
     */
    public Forms(Binder binder, Class<?> type) {
        this.root = binder.shapeOf(type);
    }

    /** What stands at a place on the way down. */
    private record Step(Shape shape, Optional<Tree> tree) {}

    /**
     * The form of a place of a document, also where the document has mistakes or nothing stands
     * there yet; absent if nothing with fields or items may stand there.
     *
     * @param keys the keys that lead there, an item of a list by its number from 0; none for the
     *     document itself
     */
    public Optional<Form> at(YamlDocument document, List<String> keys) {
        Optional<Step> step = Optional.of(new Step(root, document.asFarAsRead()));
        String path = "";
        for (String key : keys) {
            boolean item = step.filter(s -> s.shape instanceof ListShape).isPresent();
            path = item ? path + "[" + key + "]" : DocumentPlaces.under(path, key);
            step = step.flatMap(s -> down(s, key));
        }
        String at = path;
        return step.flatMap(s -> form(s, at));
    }

    private Optional<Step> down(Step from, String key) {
        Optional<Tree> tree = from.tree.flatMap(t -> child(t, key));
        return from.shape.member().or(() -> fieldOf(from, key)).map(s -> new Step(s, tree));
    }

    private Optional<Shape> fieldOf(Step from, String key) {
        return record(from).stream()
                .flatMap(r -> r.record().fields().stream())
                .filter(f -> f.key().equals(key))
                .map(FieldShape::shape)
                .findFirst();
    }

    private static Optional<Tree> child(Tree tree, String key) {
        if (tree instanceof Tree.MappingNode fields) {
            return fields.find(key).map(Tree.MappingEntry::value);
        }
        if (tree instanceof Tree.ListNode list && key.matches("[0-9]{1,6}")) {
            int index = Integer.parseInt(key);
            return index < list.items().size()
                    ? Optional.of(list.items().get(index))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    /** The record that stands there, if it can be told which. */
    private static Optional<RecordShape> record(Step step) {
        return step.shape.record(key -> text(step, key));
    }

    private static Optional<String> text(Step step, String key) {
        return step.tree
                .flatMap(t -> child(t, key))
                .filter(Tree.LeafNode.class::isInstance)
                .map(leaf -> ((Tree.LeafNode) leaf).text());
    }

    private Optional<Form> form(Step step, String path) {
        return step.shape.membersForm(step.tree, path).or(() -> recordForm(step, path));
    }

    private Optional<Form> recordForm(Step step, String path) {
        Optional<Form.KindChoice> kind = Optional.empty();
        if (step.shape instanceof UnionShape union) {
            List<String> choices = List.copyOf(union.kinds().keySet());
            String word = text(step, union.key()).orElse("");
            kind = Optional.of(new Form.KindChoice(union.key(), word, choices));
        }
        Optional<RecordShape> record = record(step);
        if (record.isEmpty() && kind.isEmpty()) {
            return Optional.empty();
        }
        String words = record.flatMap(r -> r.record().words()).orElse("");
        List<FormField> fields = record.map(r -> fields(r, step, path)).orElse(List.of());
        return Optional.of(new Form(path, words, kind, fields, Optional.empty()));
    }

    private List<FormField> fields(RecordShape record, Step step, String path) {
        List<FormField> fields = new ArrayList<>();
        for (FieldShape field : record.record().fields()) {
            Optional<Tree> written = step.tree.flatMap(t -> child(t, field.key()));
            fields.add(new FormField(field, DocumentPlaces.under(path, field.key()), written));
        }
        return fields;
    }
}
