package stillturning.yaml.shape;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stillturning.quantity.UnitSystem;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Problem;
import stillturning.yaml.Spelling;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.Checked;
import stillturning.yaml.notation.FieldInput;
import stillturning.yaml.notation.Given;

/** One field of a form: what may be written under a key, and what is. */
public final class FormField {

    /** What is known of a field beyond its shape: the names it may hold, what holds without it. */
    private record Aside(Optional<FieldInput.Name> name, Optional<String> otherwise) {}

    private final FieldShape field;
    private final String path;
    private final Optional<Tree> written;
    private final Aside aside;

    FormField(FieldShape field, String path, Optional<Tree> written) {
        this(
                field,
                path,
                written,
                new Aside(
                        Optional.empty(),
                        field.defaultText().filter(t -> !t.equals("{}") && !t.equals("[]"))));
    }

    private FormField(FieldShape field, String path, Optional<Tree> written, Aside aside) {
        this.field = field;
        this.path = path;
        this.written = written;
        this.aside = aside;
    }

    /** The same field, where a text must be the name of something that is there. */
    public FormField naming(String what, List<String> names) {
        FieldInput.Name name = new FieldInput.Name(what, names);
        return new FormField(field, path, written, new Aside(Optional.of(name), aside.otherwise));
    }

    /** The same field, where something else than its default holds if it is not written. */
    public FormField otherwise(String text) {
        return new FormField(field, path, written, new Aside(aside.name, Optional.of(text)));
    }

    /** Place of the value in the document, whether or not it is written. */
    public String path() {
        return path;
    }

    /** Name in the file; empty for an item of a list. */
    public String key() {
        return field.key();
    }

    /** Whether it is an item of a list, which has no name. */
    public boolean isItem() {
        return path.endsWith("]");
    }

    /** The key that says which of several kinds it is, if there are several. */
    public Optional<String> kindKey() {
        return field.shape() instanceof UnionShape union
                ? Optional.of(union.key())
                : Optional.empty();
    }

    /** The words of its kinds, if there are several. */
    public List<String> kinds() {
        return field.shape() instanceof UnionShape union
                ? List.copyOf(union.kinds().keySet())
                : List.of();
    }

    /** What it means, where the name does not say it. */
    public Optional<String> words() {
        return field.words();
    }

    /** How a person may be asked for it. */
    public FieldInput input() {
        FieldInput input = field.shape().input();
        return aside.name.map(input::naming).orElse(input);
    }

    /** Whether the file must have it. */
    public boolean isRequired() {
        return field.required();
    }

    /** A text that would be right. */
    public String example() {
        return field.shape().example();
    }

    /** What holds where it is not written, as text; absent if that is nothing, or required. */
    public Optional<String> otherwise() {
        return aside.otherwise;
    }

    /** What is written there, as one line that {@link #check} takes again unless it is a group. */
    public Optional<String> text() {
        return written.map(tree -> tree.line(field.shape().separator()));
    }

    /** How many entries or items are written there; 0 for a single text. */
    public int size() {
        return written.filter(Tree.BranchNode.class::isInstance)
                .map(tree -> ((Tree.BranchNode) tree).children().size())
                .orElse(0);
    }

    /**
     * A text for this field with its unit as a system has it; the same text where nothing changes.
     */
    public String shown(String text, UnitSystem system) {
        if (!(field.shape() instanceof MeasuredShape measured)) {
            return text;
        }
        Optional<Given> given =
                Given.read(text, measured.dimension(), (offset, wrong, right) -> {});
        Optional<Given> shown = given.map(g -> g.in(system));
        return shown.equals(given) ? text : shown.map(Given::written).orElse(text);
    }

    /** What a reader makes of this text in this place; a blank text leaves the field out. */
    public Checked check(String text) {
        if (text.isBlank()) {
            return isRequired()
                    ? Checked.wrong(
                            0, "\"" + key() + "\" is missing", "write for example " + example())
                    : Checked.leftOut();
        }
        String bare = text.strip();
        int cut = text.codePointCount(0, text.indexOf(bare));
        Tree tree = field.shape().tree(bare);
        Binding binding = new Binding(new DocumentPlaces(Path.of("form"), bare, Optional.of(tree)));
        Optional<?> bound = field.shape().bind(tree, path, binding);
        if (bound.isEmpty()) {
            Problem first = binding.problems().get(0);
            return Checked.wrong(first.column() - 1 + cut, first.wrong(), first.right());
        }
        return unknown(tree, cut).orElseGet(() -> Checked.right(tree.value()));
    }

    private Optional<Checked> unknown(Tree tree, int cut) {
        if (aside.name.isEmpty()) {
            return Optional.empty();
        }
        FieldInput.Name name = aside.name.get();
        return tree.leaves()
                .filter(leaf -> !name.names().contains(leaf.text()))
                .findFirst()
                .map(
                        leaf ->
                                Checked.wrong(
                                        leaf.span().column() - 1 + cut,
                                        "there is no " + name.what() + " \"" + leaf.text() + "\"",
                                        Spelling.choice(leaf.text(), name.names())));
    }
}
