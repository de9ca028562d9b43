package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Span;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** Any number of items of one shape. */
record ListShape(Shape item) implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        if (!(tree instanceof Tree.ListNode list)) {
            binding.reportForm(tree, path, this);
            return Optional.empty();
        }
        List<Object> bound = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            item.bind(list.items().get(i), DocumentPlaces.item(path, i), binding)
                    .ifPresent(bound::add);
        }
        return Optional.of(List.copyOf(bound))
                .filter(all -> all.size() == list.items().size() || !binding.isStrict());
    }

    @Override
    public FieldInput input() {
        return item.input().several(separator());
    }

    @Override
    public Optional<?> blank() {
        return Optional.of(List.of());
    }

    @Override
    public String separator() {
        return item.between();
    }

    @Override
    public Optional<Shape> member() {
        return Optional.of(item);
    }

    @Override
    public Optional<Form> membersForm(Optional<Tree> written, String path) {
        List<FormField> fields = new ArrayList<>();
        if (written.orElse(null) instanceof Tree.ListNode list) {
            for (Tree each : list.items()) {
                String at = DocumentPlaces.item(path, fields.size());
                fields.add(new FormField(FieldShape.chosen("", item), at, Optional.of(each)));
            }
        }
        String next = DocumentPlaces.item(path, fields.size());
        FormField more = new FormField(FieldShape.chosen("", item), next, Optional.empty());
        return Optional.of(new Form(path, "", Optional.empty(), fields, Optional.of(more)));
    }

    @Override
    public Tree tree(String text) {
        List<Tree> items = new ArrayList<>();
        int start = 0;
        for (String piece : text.split(Pattern.quote(separator()), -1)) {
            String bare = piece.strip();
            if (!bare.isEmpty()) {
                int at = start + piece.indexOf(bare);
                Span span = new Span(at, at + bare.length(), 1, text.codePointCount(0, at) + 1);
                items.add(new Tree.LeafNode(span, bare, Tree.Style.PLAIN));
            }
            start += piece.length() + 1;
        }
        return new Tree.ListNode(new Span(0, text.length(), 1, 1), true, List.copyOf(items));
    }

    @Override
    public String example() {
        return "[" + item.example() + "]";
    }

    @Override
    public String form() {
        return "a list";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return SchemaJson.object("type", "array", "items", item.schema(definitions));
    }
}
