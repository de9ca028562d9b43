package stillturning.yaml;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One kind of several: what every kind may say, then what this one says, all of it optional. */
record KindForm<C, T>(String word, Class<?> type, Kinds<C, T> kinds, Shapes plain, Shapes open)
        implements RecordForm {

    @Override
    public Object identity() {
        return type;
    }

    @Override
    public String name() {
        return word;
    }

    @Override
    public Optional<String> words() {
        return Shapes.words(type);
    }

    @Override
    public List<FieldShape> fields() {
        return Stream.concat(common().stream(), own().stream()).toList();
    }

    private List<FieldShape> common() {
        return plain.fieldsOf(kinds.common());
    }

    private List<FieldShape> own() {
        return open.fieldsOf(type).stream().map(FieldShape::leftOpen).toList();
    }

    @Override
    public Object make(@Nullable Object[] values) {
        int count = common().size();
        Object common = plain.make(kinds.common(), Arrays.copyOf(values, count));
        Written own = WrittenForm.written(type, own(), values, count);
        return kinds.maker().make(word, kinds.common().cast(common), own);
    }

    @Override
    public Object defaultOf(FieldShape field) {
        return plain.defaultOf(field);
    }
}
