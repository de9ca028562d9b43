package stillturning.yaml.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Spelling;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/**
 * One of several records; a key says which.
 *
 * @param key the key
 * @param kinds the records by their words
 */
record UnionShape(String key, Map<String, RecordShape> kinds) implements Shape {

    @Override
    public Optional<RecordShape> record(Function<String, Optional<String>> textAt) {
        return textAt.apply(key).flatMap(word -> Optional.ofNullable(kinds.get(word)));
    }

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        if (!(tree instanceof Tree.MappingNode fields)) {
            binding.reportForm(tree, path, this);
            return Optional.empty();
        }
        String at = DocumentPlaces.under(path, key);
        Optional<Tree.MappingEntry> is = fields.find(key);
        if (is.isEmpty()) {
            binding.report(
                    tree,
                    at,
                    "\"" + key + "\" is missing",
                    "add " + key + ": and one of " + choices());
            return Optional.empty();
        }
        Optional<Tree.LeafNode> word =
                binding.leaf(is.get().value(), at, new ChoiceShape(Map.copyOf(kinds)));
        return word.flatMap(w -> kind(w, at, binding))
                .flatMap(k -> k.bindFields(fields, path, binding, List.of(key)));
    }

    private Optional<RecordShape> kind(Tree.LeafNode word, String path, Binding binding) {
        Optional<RecordShape> kind = Optional.ofNullable(kinds.get(word.text()));
        if (kind.isEmpty()) {
            String right =
                    Spelling.didYouMean(word.text(), kinds.keySet()) + "write one of " + choices();
            binding.report(
                    word, path, "\"" + Excerpt.of(word.text()) + "\" is no known kind", right);
        }
        return kind;
    }

    private String choices() {
        return String.join(", ", kinds.keySet());
    }

    @Override
    public FieldInput input() {
        return new FieldInput.NestedForm();
    }

    @Override
    public String example() {
        return "{" + key + ": " + kinds.keySet().iterator().next() + ", ...}";
    }

    @Override
    public String form() {
        return "a mapping";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return SchemaJson.object(
                "oneOf",
                kinds.entrySet().stream()
                        .map(e -> definitions.kind(e.getValue(), key, e.getKey()))
                        .toList());
    }
}
