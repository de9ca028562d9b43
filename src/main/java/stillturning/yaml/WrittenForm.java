package stillturning.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A record class of plain SI numbers, read as {@link Written}. */
record WrittenForm(Class<?> type, Shapes shapes) implements RecordForm {

    @Override
    public Object identity() {
        return type;
    }

    @Override
    public String name() {
        return Shapes.hyphenated(type.getSimpleName());
    }

    @Override
    public Optional<String> words() {
        return Shapes.words(type);
    }

    @Override
    public List<FieldShape> fields() {
        return shapes.fieldsOf(type);
    }

    @Override
    public Object make(@Nullable Object[] values) {
        return written(type, fields(), values, 0);
    }

    @Override
    public Object defaultOf(FieldShape field) {
        return shapes.defaultOf(field);
    }

    /**
     * What is said of a record.
     *
     * @param from where the values of its fields begin
     */
    static Written written(
            Class<?> type, List<FieldShape> fields, @Nullable Object[] values, int from) {
        Map<String, Object> said = new LinkedHashMap<>();
        for (int i = 0; i < fields.size(); i++) {
            Object value = values[from + i];
            if (value instanceof Optional<?> optional) {
                String key = fields.get(i).key();
                optional.ifPresent(v -> said.put(key, v));
            } else if (value != null) {
                said.put(fields.get(i).key(), value);
            }
        }
        return new Written(type, said);
    }
}
