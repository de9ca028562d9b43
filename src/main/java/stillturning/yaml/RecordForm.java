package stillturning.yaml;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
}
