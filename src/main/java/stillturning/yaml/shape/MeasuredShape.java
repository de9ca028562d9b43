package stillturning.yaml.shape;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.Spread;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Source;
import stillturning.yaml.notation.TextForm;

/**
 * A quantity within limits.
 *
 * @param withOrigin whether it may say where it comes from
 */
record MeasuredShape(
        Dimension dimension,
        Optional<Quantity> above,
        Optional<Quantity> least,
        Optional<Quantity> most,
        boolean withOrigin)
        implements Shape {

    static MeasuredShape of(OfDimension unit, boolean withOrigin) {
        Dimension dimension = unit.value();
        return new MeasuredShape(
                dimension,
                limit(unit.above(), dimension),
                limit(unit.least(), dimension),
                limit(unit.most(), dimension),
                withOrigin);
    }

    private static Optional<Quantity> limit(String text, Dimension dimension) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Quantity.parse(text, dimension));
        } catch (MalformedQuantity malformed) {
            throw new IllegalArgumentException(
                    "limit \"" + text + "\": " + malformed.getMessage(), malformed);
        }
    }

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        Optional<Tree.LeafNode> leaf = binding.leaf(tree, path, this);
        if (leaf.isEmpty()) {
            return leaf;
        }
        TextForm.FaultReceiver faults = binding.inside(leaf.get(), path);
        if (withOrigin) {
            return Given.read(leaf.get().text(), dimension, faults)
                    .filter(g -> within(g.quantity(), faults) && reaches(g, faults));
        }
        try {
            return Optional.of(Quantity.parse(leaf.get().text(), dimension))
                    .filter(q -> within(q, faults));
        } catch (MalformedQuantity malformed) {
            faults.at(0, malformed);
            return Optional.empty();
        }
    }

    private boolean reaches(Given given, TextForm.FaultReceiver faults) {
        double si = given.quantity().si();
        double spread = given.spread().map(Spread::si).orElse(0.0);
        boolean inside = inside(si - spread) && inside(si + spread);
        if (!inside) {
            faults.at(
                    0,
                    given.value() + " reaches out of range",
                    "write a smaller range: all of it must be " + range());
        }
        return inside;
    }

    private boolean inside(double si) {
        return above.map(a -> si > a.si()).orElse(true)
                && least.map(l -> si >= l.si()).orElse(true)
                && most.map(m -> si <= m.si()).orElse(true);
    }

    private boolean within(Quantity quantity, TextForm.FaultReceiver faults) {
        boolean inside = inside(quantity.si());
        if (!inside) {
            faults.at(0, quantity.written() + " is out of range", "write " + range());
        }
        return inside;
    }

    private String range() {
        return Stream.of(
                        above.map(a -> "more than " + a.written()),
                        least.map(l -> "at least " + l.written()),
                        most.map(m -> "at most " + m.written()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" and "));
    }

    @Override
    public FieldInput input() {
        return new FieldInput.Measured(dimension, range(), withOrigin);
    }

    @Override
    public String example() {
        Quantity usual = dimension.example();
        Optional<Quantity> tooGreat = most.filter(m -> m.si() < usual.si());
        return tooGreat.or(() -> least.filter(l -> l.si() > usual.si())).orElse(usual).written();
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        String pattern =
                withOrigin
                        ? dimension.pattern() + Spread.pattern(dimension) + Source.pattern()
                        : dimension.pattern();
        return SchemaJson.object("type", "string", "pattern", "^" + pattern + "$");
    }
}
