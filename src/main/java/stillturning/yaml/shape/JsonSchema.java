package stillturning.yaml.shape;

import java.util.Map;

/** JSON Schema of record types, for completion in editors. */
public final class JsonSchema {

    private JsonSchema() {}

    /**
     * Schema (draft 2020-12) of what a binder accepts for a type, as pretty-printed text, the same
     * on every run. It states form, words and units; limits of quantities are the binder's alone.
     *
     * @throws IllegalArgumentException if the type is none that can be bound
     */
    public static String of(Class<?> root, Binder binder) {
        SchemaDefinitions definitions = new SchemaDefinitions();
        Map<String, Object> top = new Shapes(binder.forms()).of(root).schema(definitions);
        Map<String, Object> schema =
                SchemaJson.object("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.putAll(top);
        schema.put("$defs", definitions.all());
        return SchemaJson.print(schema);
    }
}
