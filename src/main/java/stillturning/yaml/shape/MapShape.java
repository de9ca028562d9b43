package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Tree;
import stillturning.yaml.notation.FieldInput;

/** Values of one shape under names that the user chooses. */
record MapShape(Shape value) implements Shape {

    private static final String NAME = "[a-z0-9][a-z0-9.-]*";
    private static final Pattern ACCEPTED = Pattern.compile(NAME);
    private static final Pattern FOREIGN = Pattern.compile("[^a-z0-9.]+");

    @Override
    public Optional<Shape> member() {
        return Optional.of(value);
    }

    @Override
    public Optional<Form> membersForm(Optional<Tree> written, String path) {
        List<FormField> fields = new ArrayList<>();
        if (written.orElse(null) instanceof Tree.MappingNode map) {
            for (Tree.MappingEntry entry : map.entries()) {
                String name = entry.key().text();
                fields.add(
                        new FormField(
                                FieldShape.chosen(name, value),
                                DocumentPlaces.under(path, name),
                                Optional.of(entry.value())));
            }
        }
        FormField more = new FormField(FieldShape.chosen("", value), path, Optional.empty());
        return Optional.of(new Form(path, "", Optional.empty(), fields, Optional.of(more)));
    }

    @Override
    public Optional<?> bind(Tree tree, String path, Binding binding) {
        if (!(tree instanceof Tree.MappingNode fields)) {
            binding.reportForm(tree, path, this);
            return Optional.empty();
        }
        Map<String, Object> bound = new LinkedHashMap<>();
        for (Tree.MappingEntry entry : fields.entries()) {
            String name = entry.key().text();
            String at = DocumentPlaces.under(path, name);
            boolean named = isName(entry.key(), at, binding);
            value.bind(entry.value(), at, binding)
                    .filter(v -> named)
                    .ifPresent(v -> bound.put(name, v));
        }
        return Optional.of(Collections.unmodifiableMap(bound))
                .filter(all -> all.size() == fields.entries().size() || !binding.isStrict());
    }

    private static boolean isName(Tree.LeafNode key, String path, Binding binding) {
        if (ACCEPTED.matcher(key.text()).matches()) {
            return true;
        }
        String proper =
                FOREIGN.matcher(key.text().toLowerCase(Locale.ROOT))
                        .replaceAll("-")
                        .replaceAll("^[-.]+|-+$", "");
        String meant = proper.isEmpty() ? "" : "did you mean \"" + Excerpt.of(proper) + "\"? ";
        binding.report(
                key,
                path,
                "\"" + Excerpt.of(key.text()) + "\" cannot be a name",
                meant + "use lower case letters, digits and hyphens");
        return false;
    }

    @Override
    public FieldInput input() {
        return new FieldInput.NestedForm();
    }

    @Override
    public Optional<?> blank() {
        return Optional.of(Map.of());
    }

    @Override
    public String example() {
        return "{some-name: " + value.example() + "}";
    }

    @Override
    public String form() {
        return "a mapping";
    }

    @Override
    public Map<String, Object> schema(SchemaDefinitions definitions) {
        return SchemaJson.object(
                "type", "object",
                "propertyNames", SchemaJson.object("pattern", "^" + NAME + "$"),
                "additionalProperties", value.schema(definitions));
    }
}
