package stillturning.yaml;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A record class, read into its components. */
record ClassForm(Class<?> type, Shapes shapes) implements RecordForm {

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
        return shapes.make(type, values);
    }

    @Override
    public Object defaultOf(FieldShape field) {
        return shapes.defaultOf(field);
    }
}
