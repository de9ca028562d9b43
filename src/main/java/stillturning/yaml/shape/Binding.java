package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Place;
import stillturning.yaml.Problem;
import stillturning.yaml.Span;
import stillturning.yaml.TextPlace;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.TextForm;

/** One run over one document: collects what is wrong. */
final class Binding {

    private final DocumentPlaces places;
    private final boolean strict;
    private final List<Problem> problems = new ArrayList<>();

    Binding(DocumentPlaces places) {
        this(places, true);
    }

    private Binding(DocumentPlaces places, boolean strict) {
        this.places = places;
        this.strict = strict;
    }

    /** A run over a half-written document: what cannot be read is left out. */
    static Binding lenient(DocumentPlaces places) {
        return new Binding(places, false);
    }

    /** Whether one mistake is enough for a value not to be there. */
    boolean isStrict() {
        return strict;
    }

    List<Problem> problems() {
        return problems;
    }

    /** Tells a problem at the start of a tree. */
    void report(Tree at, String path, String wrong, String right) {
        Span span = at.span();
        problems.add(new Problem(places.file(), span.line(), span.column(), path, wrong, right));
    }

    /** Takes problems inside the text of a leaf. */
    TextForm.FaultReceiver inside(Tree.LeafNode leaf, String path) {
        return (offset, wrong, right) -> {
            Place at = TextPlace.inside(leaf, places.text(), offset);
            problems.add(new Problem(places.file(), at.line(), at.column(), path, wrong, right));
        };
    }

    /** The tree as a text with something in it; otherwise tells what stands there instead. */
    Optional<Tree.LeafNode> leaf(Tree tree, String path, Shape shape) {
        if (!(tree instanceof Tree.LeafNode leaf)) {
            reportForm(tree, path, shape);
            return Optional.empty();
        }
        if (leaf.isNull() || leaf.text().isBlank()) {
            report(tree, path, "no value is written", "write for example " + shape.example());
            return Optional.empty();
        }
        return Optional.of(leaf);
    }

    /** Tells that a tree has the wrong form altogether. */
    void reportForm(Tree tree, String path, Shape shape) {
        if (tree.isNull()) {
            report(tree, path, "no value is written", "write for example " + shape.example());
            return;
        }
        report(
                tree,
                path,
                tree.form() + " stands where " + shape.form() + " belongs",
                "write for example " + shape.example());
    }
}
