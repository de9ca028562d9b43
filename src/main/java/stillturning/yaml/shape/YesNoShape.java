package stillturning.yaml.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** {@code yes} or {@code no}; {@code true} and {@code false} are taken too. */
record YesNoShape() implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.LeafNode> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        return switch (leaf.get().text()) {
            case "yes", "true" -> Optional.of(true);
            case "no", "false" -> Optional.of(false);
            default -> {
                String shown = Excerpt.of(leaf.get().text());
                binding.report(
                        tree, path, "\"" + shown + "\" is neither yes nor no", "write yes or no");
                yield Optional.empty();
            }
        };
    }

    @Override
    public FieldInput input() {
        return new FieldInput.Choice(List.of("yes", "no"));
    }

    @Override
    public String example() {
        return "yes";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return SchemaJson.object("enum", List.of("yes", "no", true, false, "true", "false"));
    }
}
