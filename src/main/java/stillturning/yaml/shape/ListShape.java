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
        if (!(tree instanceof Tree.Items list)) {
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
        FieldInput each = item.input();
        return each instanceof FieldInput.Group ? each : new FieldInput.Several(each, separator());
    }

    @Override
    public Optional<?> blank() {
        return Optional.of(List.of());
    }

    /** One-line notations have commas of their own. */
    String separator() {
        return item instanceof WrittenShape ? ";" : ",";
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
                items.add(new Tree.Leaf(span, bare, Tree.Style.PLAIN));
            }
            start += piece.length() + 1;
        }
        return new Tree.Items(new Span(0, text.length(), 1, 1), true, List.copyOf(items));
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
