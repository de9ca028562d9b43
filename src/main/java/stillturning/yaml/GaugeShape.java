package stillturning.yaml;

import java.util.Map;
import java.util.Optional;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.WireGauge;

/** A wire gauge. */
record GaugeShape() implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.Leaf> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        try {
            return Optional.of(WireGauge.parse(leaf.get().text()));
        } catch (MalformedQuantity malformed) {
            binding.inside(leaf.get(), path).at(0, malformed);
            return Optional.empty();
        }
    }

    @Override
    public String example() {
        return "AWG 16";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return Json.object("type", "string", "pattern", "^(" + WireGauge.PATTERN + ")$");
    }
}
