package stillturning.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
            item.bind(list.items().get(i), Places.item(path, i), binding).ifPresent(bound::add);
        }
        return Optional.of(List.copyOf(bound)).filter(all -> all.size() == list.items().size());
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
        return Json.object("type", "array", "items", item.schema(definitions));
    }
}
