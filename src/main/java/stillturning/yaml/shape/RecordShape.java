package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Spelling;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** A mapping with fixed fields. */
record RecordShape(RecordForm record) implements Shape {

    @Override
    public Optional<RecordShape> record(Function<String, Optional<String>> textAt) {
        return Optional.of(this);
    }

    @Override
    public String brief() {
        return "...";
    }

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        if (!(tree instanceof Tree.MappingNode fields)) {
            binding.reportForm(tree, path, this);
            return Optional.empty();
        }
        return bindFields(fields, path, binding, List.of());
    }

    /**
     * Reads the fields of a mapping.
     *
     * @param known keys that somebody else reads
     */
    Optional<?> bindFields(
            Tree.MappingNode written, String path, Binding binding, List<String> known) {
        List<FieldShape> fields = record.fields();
        boolean noStranger = refuseUnknown(written, path, binding, known);
        @Nullable Object[] values = new Object[fields.size()];
        boolean complete = noStranger;
        for (int i = 0; i < values.length; i++) {
            values[i] = fieldValue(fields.get(i), written, path, binding).orElse(null);
            complete &= values[i] != null;
        }
        return complete ? made(values, written, path, binding) : Optional.empty();
    }

    private Optional<?> fieldValue(
            FieldShape field, Tree.MappingNode written, String path, Binding binding) {
        String at = DocumentPlaces.under(path, field.key());
        Optional<Tree.MappingEntry> entry = written.find(field.key());
        if (entry.isPresent()) {
            Optional<?> bound =
                    field.shape().bind(entry.get().value(), at, binding).map(field::component);
            return bound.isPresent() || binding.isStrict() ? bound : instead(field);
        }
        Optional<?> absent = absent(field);
        return absent.isPresent() ? absent : missing(field, written, at, binding);
    }

    /** What a field holds that is not written and need not be. */
    private Optional<?> absent(FieldShape field) {
        return field.optional()
                ? Optional.of(Optional.empty())
                : field.defaultText().map(text -> record.defaultOf(field));
    }

    /** What a half-written file has in the place of a value that cannot be read. */
    private Optional<?> instead(FieldShape field) {
        Optional<?> absent = absent(field);
        return absent.isPresent() ? absent : field.shape().blank();
    }

    private Optional<?> missing(
            FieldShape field, Tree.MappingNode written, String at, Binding binding) {
        if (!binding.isStrict()) {
            return field.shape().blank();
        }
        String example = field.key() + ": " + field.shape().example();
        binding.report(
                written,
                at,
                "\"" + field.key() + "\" is missing",
                "add it, for example " + example);
        return Optional.empty();
    }

    private boolean refuseUnknown(
            Tree.MappingNode written, String path, Binding binding, List<String> known) {
        List<String> allowed = new ArrayList<>(known);
        record.fields().forEach(f -> allowed.add(f.key()));
        List<Tree.LeafNode> strangers =
                written.entries().stream()
                        .map(Tree.MappingEntry::key)
                        .filter(key -> !allowed.contains(key.text()))
                        .toList();
        List<String> free = allowed.stream().filter(a -> written.find(a).isEmpty()).toList();
        for (Tree.LeafNode key : strangers) {
            binding.report(
                    key,
                    DocumentPlaces.under(path, key.text()),
                    "\"" + Excerpt.of(key.text()) + "\" is not known here",
                    Spelling.didYouMean(key.text(), free)
                            + "known here: "
                            + String.join(", ", allowed));
        }
        return strangers.isEmpty() || !binding.isStrict();
    }

    // a record's own refusal is written "what is wrong; what would be right"
    private Optional<?> made(
            @Nullable Object[] values, Tree written, String path, Binding binding) {
        try {
            return Optional.of(record.make(values));
        } catch (IllegalArgumentException refused) {
            String[] words = String.valueOf(refused.getMessage()).split("; ", 2);
            binding.report(
                    written,
                    path,
                    words[0],
                    words.length > 1 ? words[1] : "correct the values here");
            return Optional.empty();
        }
    }

    @Override
    public FieldInput input() {
        return new FieldInput.NestedForm();
    }

    @Override
    public Optional<?> blank() {
        List<FieldShape> fields = record.fields();
        @Nullable Object[] values = new Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = instead(fields.get(i)).orElse(null);
            if (values[i] == null) {
                return Optional.empty();
            }
        }
        return Optional.of(record.make(values));
    }

    @Override
    public String example() {
        return record.fields().stream()
                .filter(FieldShape::required)
                .findFirst()
                .map(f -> "{" + f.key() + ": " + f.shape().brief() + ", ...}")
                .orElse("{}");
    }

    @Override
    public String form() {
        return "a mapping";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return definitions.record(this);
    }
}
