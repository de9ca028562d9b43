package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;

/** The forms of one type of document, made of the same shapes as its reader and its schema. */
public final class Forms {

    private final Shapes shapes;
    private final Shape root;

    /**
     * The forms of documents that a binder reads as a type.
     *
     * @throws IllegalArgumentException if the type is none that can be bound
     */
    public Forms(Binder binder, Class<?> type) {
        this.shapes = new Shapes(binder.forms());
        this.root = shapes.of(type);
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
        if (from.shape instanceof MapShape map) {
            return Optional.of(new Step(map.value(), tree));
        }
        if (from.shape instanceof ListShape list) {
            return Optional.of(new Step(list.item(), tree));
        }
        return record(from)
                .flatMap(
                        r ->
                                shapes.fieldsOf(r.type()).stream()
                                        .filter(f -> f.key().equals(key))
                                        .findFirst())
                .map(f -> new Step(f.shape(), tree));
    }

    private static Optional<Tree> child(Tree tree, String key) {
        if (tree instanceof Tree.Fields fields) {
            return fields.find(key).map(Tree.Entry::value);
        }
        if (tree instanceof Tree.Items list && key.matches("[0-9]{1,6}")) {
            int index = Integer.parseInt(key);
            return index < list.items().size()
                    ? Optional.of(list.items().get(index))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    /** The record that stands there, if it can be told which. */
    private static Optional<RecordShape> record(Step step) {
        Shape shape = step.shape;
        if (shape instanceof WrittenShape written && written.longForm().isPresent()) {
            shape = written.longForm().get();
        }
        if (shape instanceof UnionShape union) {
            return word(union, step).flatMap(w -> Optional.ofNullable(union.kinds().get(w)));
        }
        return shape instanceof RecordShape record ? Optional.of(record) : Optional.empty();
    }

    private static Optional<String> word(UnionShape union, Step step) {
        return step.tree
                .flatMap(t -> child(t, union.key()))
                .filter(Tree.Leaf.class::isInstance)
                .map(leaf -> ((Tree.Leaf) leaf).text());
    }

    private Optional<Form> form(Step step, String path) {
        if (step.shape instanceof MapShape map) {
            return Optional.of(named(map, step, path));
        }
        if (step.shape instanceof ListShape list) {
            return Optional.of(items(list, step, path));
        }
        Optional<Form.Kind> kind = Optional.empty();
        if (step.shape instanceof UnionShape union) {
            List<String> choices = List.copyOf(union.kinds().keySet());
            kind = Optional.of(new Form.Kind(union.key(), word(union, step).orElse(""), choices));
        }
        Optional<RecordShape> record = record(step);
        if (record.isEmpty() && kind.isEmpty()) {
            return Optional.empty();
        }
        String words = record.flatMap(r -> Shapes.words(r.type())).orElse("");
        List<FormField> fields = record.map(r -> fields(r, step, path)).orElse(List.of());
        return Optional.of(new Form(path, words, kind, fields, Optional.empty()));
    }

    private List<FormField> fields(RecordShape record, Step step, String path) {
        List<FormField> fields = new ArrayList<>();
        for (FieldShape field : shapes.fieldsOf(record.type())) {
            Optional<Tree> written = step.tree.flatMap(t -> child(t, field.key()));
            fields.add(new FormField(field, DocumentPlaces.under(path, field.key()), written));
        }
        return fields;
    }

    private static Form named(MapShape map, Step step, String path) {
        List<FormField> fields = new ArrayList<>();
        if (step.tree.orElse(null) instanceof Tree.Fields written) {
            for (Tree.Entry entry : written.entries()) {
                String name = entry.key().text();
                fields.add(
                        new FormField(
                                chosen(name, map.value()),
                                DocumentPlaces.under(path, name),
                                Optional.of(entry.value())));
            }
        }
        FormField more = new FormField(chosen("", map.value()), path, Optional.empty());
        return new Form(path, "", Optional.empty(), fields, Optional.of(more));
    }

    private static Form items(ListShape list, Step step, String path) {
        List<FormField> fields = new ArrayList<>();
        if (step.tree.orElse(null) instanceof Tree.Items written) {
            for (int i = 0; i < written.items().size(); i++) {
                fields.add(
                        new FormField(
                                chosen("", list.item()),
                                DocumentPlaces.item(path, i),
                                Optional.of(written.items().get(i))));
            }
        }
        String next = DocumentPlaces.item(path, fields.size());
        FormField more = new FormField(chosen("", list.item()), next, Optional.empty());
        return new Form(path, "", Optional.empty(), fields, Optional.of(more));
    }

    /** A field that can be taken out, since a person put it there. */
    private static FieldShape chosen(String name, Shape shape) {
        return new FieldShape(name, shape, true, Optional.empty(), Optional.empty());
    }
}
