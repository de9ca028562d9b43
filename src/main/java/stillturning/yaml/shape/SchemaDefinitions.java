package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.quantity.field.Key;

/** The named parts of a schema, each record type once, so that types may contain themselves. */
final class SchemaDefinitions {

    private record Key(Object record, Optional<String> kind) {}

    private final Map<Key, String> names = new LinkedHashMap<>();
    private final Map<String, Object> definitions = new LinkedHashMap<>();

    /** Reference to a record. */
    Map<String, Object> record(RecordShape shape) {
        return reference(shape, Optional.empty(), SchemaJson.object());
    }

    /** Reference to a record that is one kind of a union. */
    Map<String, Object> kind(RecordShape shape, String key, String word) {
        return reference(
                shape, Optional.of(word), SchemaJson.object(key, SchemaJson.object("const", word)));
    }

    Map<String, Object> all() {
        return definitions;
    }

    private Map<String, Object> reference(
            RecordShape shape, Optional<String> kind, Map<String, Object> fixed) {
        Key key = new Key(shape.record().identity(), kind);
        String known = names.get(key);
        if (known == null) {
            known = free(shape.record().name() + (kind.isPresent() ? "-kind" : ""));
            names.put(key, known);
            definitions.put(known, SchemaJson.object());
            definitions.put(known, body(shape, fixed));
        }
        return SchemaJson.object("$ref", "#/$defs/" + known);
    }

    private String free(String name) {
        String free = name;
        for (int i = 2; definitions.containsKey(free); i++) {
            free = name + "-" + i;
        }
        return free;
    }

    private Map<String, Object> body(RecordShape shape, Map<String, Object> fixed) {
        Map<String, Object> properties = new LinkedHashMap<>(fixed);
        List<String> required = new ArrayList<>(fixed.keySet());
        for (FieldShape field : shape.record().fields()) {
            properties.put(field.key(), property(field));
            if (field.required()) {
                required.add(field.key());
            }
        }
        Map<String, Object> body = SchemaJson.object("type", "object");
        shape.record().words().ifPresent(words -> body.put("description", words));
        body.put("properties", properties);
        body.put("required", required);
        body.put("additionalProperties", false);
        return body;
    }

    private Map<String, Object> property(FieldShape field) {
        Map<String, Object> property = SchemaJson.object();
        field.words().ifPresent(words -> property.put("description", words));
        property.putAll(field.shape().schema(this));
        field.defaultText().ifPresent(text -> property.put("default", text));
        return property;
    }
}
