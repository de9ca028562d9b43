package stillturning.yaml.notation;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.quantity.field.Fields;

/**
 * How a record type is taken apart and filled, found out once: a class parses its annotations anew
 * whenever it is asked.
 */
public record RecordLayout(List<LayoutField> fields, Constructor<?> constructor) {

    /**
     * A component.
     *
     * @param key its key in the files
     * @param mayLack whether it may be left open for good
     */
    public record LayoutField(String key, boolean mayLack, Method accessor) {

        static LayoutField of(RecordComponent component) {
            return new LayoutField(
                    Fields.keyOf(component),
                    component.getType() == Optional.class,
                    component.getAccessor());
        }

        /** What a record has there. */
        public Object of(Object record) {
            try {
                return accessor.invoke(record);
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException("component " + accessor, impossible);
            }
        }
    }

    private static final ClassValue<RecordLayout> LAYOUTS =
            new ClassValue<>() {
                @Override
                protected RecordLayout computeValue(Class<?> type) {
                    RecordComponent[] components = type.getRecordComponents();
                    return new RecordLayout(
                            Arrays.stream(components).map(LayoutField::of).toList(),
                            constructor(type, components));
                }
            };

    /** That of a record type. */
    public static RecordLayout of(Class<?> type) {
        return LAYOUTS.get(type);
    }

    private static Constructor<?> constructor(Class<?> type, RecordComponent[] components) {
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("record " + type, impossible);
        }
    }

    /** The record of these values, in the order of the fields. */
    public Object made(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw new IllegalStateException("constructor of " + constructor, thrown);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(constructor + " cannot be called", closed);
        }
    }
}
