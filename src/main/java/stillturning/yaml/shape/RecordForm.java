package stillturning.yaml.shape;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stillturning.quantity.field.Fields;
import stillturning.yaml.notation.Kinds;
import stillturning.yaml.notation.Written;

/** What a mapping with fixed fields is made of, and what is made of it. */
interface RecordForm {

    /** The same for every form that reads the same mapping. */
    Object identity();

    /** Its name in a schema. */
    String name();

    /** What it means, in a sentence. */
    Optional<String> words();

    /** Its fields, in the order in which a person reads them. */
    List<FieldShape> fields();

    /**
     * Makes the value.
     *
     * @param values of the fields, in their order
     * @throws IllegalArgumentException if the values contradict each other
     */
    Object make(@Nullable Object[] values);

    /** What a field holds where it is not written; the same value each time. */
    Object defaultOf(FieldShape field);

    /** A record class, read into its components. */
    record OfClass(Class<?> type, Shapes shapes) implements RecordForm {

        @Override
        public Object identity() {
            return type;
        }

        @Override
        public String name() {
            return Fields.hyphenated(type.getSimpleName());
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

    /** A record class of plain SI numbers, read as {@link Written}. */
    record AsWritten(Class<?> type, Shapes shapes) implements RecordForm {

        @Override
        public Object identity() {
            return type;
        }

        @Override
        public String name() {
            return Fields.hyphenated(type.getSimpleName());
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

    /**
     * One kind of several: what every kind may say, then what this one says, all of it optional.
     */
    record OfKind<C, T>(String word, Class<?> type, Kinds<C, T> kinds, Shapes plain, Shapes open)
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
            Written own = AsWritten.written(type, own(), values, count);
            return kinds.maker().make(word, kinds.common().cast(common), own);
        }

        @Override
        public Object defaultOf(FieldShape field) {
            return plain.defaultOf(field);
        }
    }
}
