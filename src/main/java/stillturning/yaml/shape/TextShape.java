package stillturning.yaml.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** Any text. */
record TextShape() implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        return binding.leaf(tree, path, this).map(Tree.LeafNode::text);
    }

    @Override
    public FieldInput input() {
        return new FieldInput.AnyText();
    }

    @Override
    public Optional<?> blank() {
        return Optional.of("");
    }

    @Override
    public String example() {
        return "a few words";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        // a text such as 12 or true needs no quotes here, though YAML has other names for it
        return SchemaJson.object("type", List.of("string", "number", "boolean"), "pattern", "[^ ]");
    }
}
