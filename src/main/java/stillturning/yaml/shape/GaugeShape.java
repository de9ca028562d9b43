package stillturning.yaml.shape;

import java.util.Map;
import java.util.Optional;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;
import stillturning.yaml.notation.GivenGauge;
import stillturning.yaml.notation.Source;
import stillturning.yaml.notation.TextForm;

/**
 * A wire gauge.
 *
 * @param withOrigin whether it may say where it comes from
 */
record GaugeShape(boolean withOrigin) implements Shape {

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.LeafNode> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        TextForm.FaultReceiver faults = binding.inside(leaf.get(), path);
        if (withOrigin) {
            return GivenGauge.read(leaf.get().text(), faults);
        }
        try {
            return Optional.of(WireGauge.parse(leaf.get().text()));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }

    @Override
    public FieldInput input() {
        return new FieldInput.Gauge();
    }

    @Override
    public String example() {
        return "AWG 16";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        String origin = withOrigin ? Source.pattern() : "";
        return SchemaJson.object(
                "type", "string", "pattern", "^(" + WireGauge.PATTERN + ")" + origin + "$");
    }
}
