package stillturning.yaml.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Spelling;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** One of a fixed set of words. */
record ChoiceShape(Map<String, Object> words) implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.LeafNode> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        String text = leaf.get().text();
        Optional<Object> chosen = Optional.ofNullable(words.get(text));
        if (chosen.isEmpty()) {
            String right =
                    Spelling.didYouMean(text, words.keySet())
                            + "write one of "
                            + String.join(", ", words.keySet());
            binding.report(
                    tree, path, "\"" + Excerpt.of(text) + "\" is none of the choices", right);
        }
        return chosen;
    }

    @Override
    public FieldInput input() {
        return new FieldInput.Choice(List.copyOf(words.keySet()));
    }

    @Override
    public String example() {
        return words.keySet().iterator().next();
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return SchemaJson.object("enum", List.copyOf(words.keySet()));
    }
}
