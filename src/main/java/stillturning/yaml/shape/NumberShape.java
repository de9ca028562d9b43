package stillturning.yaml.shape;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/**
 * A number without unit.
 *
 * @param kind {@code int}, {@code long} or {@code double}
 */
record NumberShape(Class<?> kind, BigDecimal least, BigDecimal most) implements Shape {

    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,30}");
    private static final Pattern PLAIN =
            Pattern.compile("[+-]?[0-9]{1,30}(\\.[0-9]{1,30})?([eE][+-]?[0-9]{1,3})?");

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.LeafNode> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        String text = leaf.get().text();
        Pattern accepted = kind == double.class ? PLAIN : WHOLE;
        if (!accepted.matcher(text).matches()) {
            String wanted = kind == double.class ? "a number without unit" : "a whole number";
            binding.report(
                    tree,
                    path,
                    "\"" + Excerpt.of(text) + "\" is not " + wanted,
                    "write " + range());
            return Optional.empty();
        }
        if (leaf.get().style() != Tree.Style.PLAIN) {
            binding.report(
                    tree, path, "the number stands in quotes", "write " + text + " without quotes");
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(text);
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
            binding.report(tree, path, text + " is out of range", "write " + range());
            return Optional.empty();
        }
        return Optional.of(boxed(number));
    }

    private Object boxed(BigDecimal number) {
        if (kind == double.class) {
            return number.doubleValue();
        }
        return kind == int.class
                ? (Object) number.intValueExact()
                : (Object) number.longValueExact();
    }

    private String range() {
        return "a number from " + least.toPlainString() + " to " + most.toPlainString();
    }

    @Override
    public FieldInput input() {
        return new FieldInput.PlainNumber(range());
    }

    @Override
    public String example() {
        return BigDecimal.ONE.max(least).min(most).toPlainString();
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        String type = kind == double.class ? "number" : "integer";
        return SchemaJson.object("type", type, "minimum", least, "maximum", most);
    }
}
