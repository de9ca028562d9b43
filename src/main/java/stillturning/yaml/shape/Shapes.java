package stillturning.yaml.shape;

import java.lang.invoke.MethodType;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Fields;
import stillturning.quantity.field.Key;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Discriminator;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.GivenGauge;
import stillturning.yaml.notation.Kinds;

/**
 * Finds the shape of a type by looking at its record components and annotations. May be asked from
 * any thread.
 */
final class Shapes {

    private final Map<Class<?>, TextNotation> forms;
    private final Map<Class<?>, Kinds<?, ?>> kinds;
    private final Reading reading;
    private final Map<Class<?>, List<FieldShape>> fields = new ConcurrentHashMap<>();
    private final Map<Class<?>, Constructor<?>> constructors = new ConcurrentHashMap<>();
    private final Map<FieldShape, Object> defaults =
            Collections.synchronizedMap(new IdentityHashMap<>());

    /** What becomes of a record. */
    private enum Reading {
        /** It is made as its class is. */
        PLAIN,
        /** It is kept as it is written, quantities with their origins. */
        AS_WRITTEN
    }

    Shapes(Map<Class<?>, TextNotation> forms, Map<Class<?>, Kinds<?, ?>> kinds) {
        this(forms, kinds, Reading.PLAIN);
    }

    private Shapes(
            Map<Class<?>, TextNotation> forms, Map<Class<?>, Kinds<?, ?>> kinds, Reading reading) {
        this.forms = forms;
        this.kinds = kinds;
        this.reading = reading;
    }

    /** Shape of a type that stands alone. */
    Shape of(Class<?> type) {
        return ofClass(type, type);
    }

    /** Fields of a record type, in the order of its components. */
    List<FieldShape> fieldsOf(Class<?> type) {
        List<FieldShape> known = fields.get(type);
        if (known == null) {
            List<FieldShape> made =
                    Arrays.stream(type.getRecordComponents()).map(this::field).toList();
            List<FieldShape> earlier = fields.putIfAbsent(type, made);
            known = earlier == null ? made : earlier;
        }
        return known;
    }

    /** What a field holds where it is not written; the same value each time. */
    Object defaultOf(FieldShape field) {
        Object known = defaults.get(field);
        if (known == null) {
            Object made = field.defaultValue();
            Object earlier = defaults.putIfAbsent(field, made);
            known = earlier == null ? made : earlier;
        }
        return known;
    }

    /**
     * Makes a record.
     *
     * @throws IllegalArgumentException if the record refuses the values
     */
    Object make(Class<?> type, @Nullable Object[] values) {
        try {
            return constructors.computeIfAbsent(type, Shapes::constructor).newInstance(values);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw new IllegalStateException("constructor of " + type, thrown);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException("constructor of " + type + " cannot be called", closed);
        }
    }

    static Constructor<?> constructor(Class<?> type) {
        Class<?>[] types =
                Arrays.stream(type.getRecordComponents())
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor;
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("record " + type, impossible);
        }
    }

    private FieldShape field(RecordComponent component) {
        try {
            Type type = component.getGenericType();
            boolean optional = component.getType() == Optional.class;
            return new FieldShape(
                    Fields.keyOf(component),
                    ofType(optional ? argument(type, 0) : type, component),
                    optional,
                    Optional.ofNullable(component.getAnnotation(Default.class)).map(Default::value),
                    words(component));
        } catch (IllegalArgumentException unfit) {
            String where =
                    component.getDeclaringRecord().getSimpleName() + "." + component.getName();
            throw new IllegalArgumentException(where + ": " + unfit.getMessage(), unfit);
        }
    }

    private Shape ofType(Type type, AnnotatedElement marks) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return new ListShape(ofType(argument(type, 0), marks));
        }
        if (type instanceof ParameterizedType generic
                && generic.getRawType() == Map.class
                && argument(type, 0) == String.class) {
            return new MapShape(ofType(argument(type, 1), marks));
        }
        if (type instanceof Class<?> plain) {
            return ofClass(MethodType.methodType(plain).unwrap().returnType(), marks);
        }
        throw new IllegalArgumentException(
                "a component of type " + type + " cannot be read from a file");
    }

    private Shape ofClass(Class<?> type, AnnotatedElement marks) {
        Kinds<?, ?> union = kinds.get(type);
        if (union != null) {
            return union(union);
        }
        TextNotation notation = forms.get(type);
        if (notation != null) {
            boolean hasLongForm =
                    notation.example().isEmpty() && (type.isRecord() || type.isSealed());
            return new WrittenShape(
                    type, notation, hasLongForm ? Optional.of(structured(type)) : Optional.empty());
        }
        if (type == String.class) {
            return new TextShape();
        }
        if (reading == Reading.AS_WRITTEN
                && type == double.class
                && marks.isAnnotationPresent(OfDimension.class)) {
            return MeasuredShape.of(unit(marks), true);
        }
        if (type == boolean.class) {
            return new YesNoShape();
        }
        if (type == int.class || type == long.class || type == double.class) {
            return number(type, Optional.ofNullable(marks.getAnnotation(Bounds.class)));
        }
        if (type == WireGauge.class || type == GivenGauge.class) {
            return new GaugeShape(type == GivenGauge.class);
        }
        if (type == Quantity.class || type == Given.class) {
            return MeasuredShape.of(unit(marks), type == Given.class);
        }
        return type.isEnum() ? choice(type) : structured(type);
    }

    private UnionShape union(Kinds<?, ?> of) {
        Shapes asWritten = new Shapes(forms, kinds, Reading.AS_WRITTEN);
        Map<String, RecordShape> shapes = new LinkedHashMap<>();
        of.values()
                .forEach(
                        (word, type) ->
                                shapes.put(
                                        word,
                                        new RecordShape(
                                                new RecordForm.OfKind<>(
                                                        word, type, of, this, asWritten))));
        return new UnionShape(of.key(), Collections.unmodifiableMap(shapes));
    }

    private static OfDimension unit(AnnotatedElement marks) {
        return Optional.ofNullable(marks.getAnnotation(OfDimension.class))
                .orElseThrow(() -> new IllegalArgumentException("a quantity needs @OfDimension"));
    }

    private static Shape number(Class<?> type, Optional<Bounds> bounds) {
        if (bounds.isPresent()) {
            return new NumberShape(type, exact(bounds.get().least()), exact(bounds.get().most()));
        }
        if (type == double.class) {
            throw new IllegalArgumentException("a double needs @Bounds, or should be a Quantity");
        }
        boolean isInt = type == int.class;
        return new NumberShape(
                type,
                BigDecimal.valueOf(isInt ? Integer.MIN_VALUE : Long.MIN_VALUE),
                BigDecimal.valueOf(isInt ? Integer.MAX_VALUE : Long.MAX_VALUE));
    }

    private static BigDecimal exact(double limit) {
        return new BigDecimal(Double.toString(limit)).stripTrailingZeros();
    }

    private static Shape choice(Class<?> type) {
        Map<String, Object> words = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            String name = ((Enum<?>) constant).name();
            try {
                words.put(word(type.getField(name), Fields.hyphenated(name)), constant);
            } catch (NoSuchFieldException impossible) {
                throw new IllegalStateException("enum " + type, impossible);
            }
        }
        return new ChoiceShape(Collections.unmodifiableMap(words));
    }

    private Shape structured(Class<?> type) {
        if (type.isRecord()) {
            return new RecordShape(
                    reading == Reading.PLAIN
                            ? new RecordForm.OfClass(type, this)
                            : new RecordForm.AsWritten(type, this));
        }
        Discriminator discriminator = type.getAnnotation(Discriminator.class);
        if (!type.isSealed() || discriminator == null) {
            throw new IllegalArgumentException(
                    type
                            + " is no record, no sealed interface with @Discriminator, and has no text form");
        }
        Map<String, RecordShape> kinds = new LinkedHashMap<>();
        addKinds(type, kinds);
        return new UnionShape(discriminator.value(), Collections.unmodifiableMap(kinds));
    }

    private void addKinds(Class<?> type, Map<String, RecordShape> kinds) {
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            if (permitted.isSealed()) {
                addKinds(permitted, kinds);
            } else if (!permitted.isRecord()) {
                throw new IllegalArgumentException(permitted + " is no record");
            } else if (kinds.put(
                            word(permitted, Fields.hyphenated(permitted.getSimpleName())),
                            new RecordShape(new RecordForm.OfClass(permitted, this)))
                    != null) {
                throw new IllegalArgumentException(
                        "two kinds of " + type + " have the word of " + permitted);
            }
        }
    }

    private static Optional<String> words(RecordComponent component) {
        return words((AnnotatedElement) component)
                .or(
                        () ->
                                Arrays.stream(component.getDeclaringRecord().getInterfaces())
                                        .flatMap(i -> Arrays.stream(i.getMethods()))
                                        .filter(m -> m.getName().equals(component.getName()))
                                        .findFirst()
                                        .flatMap(Shapes::words));
    }

    static Optional<String> words(AnnotatedElement element) {
        return Optional.ofNullable(element.getAnnotation(Describes.class)).map(Describes::value);
    }

    private static String word(AnnotatedElement element, String usual) {
        return Optional.ofNullable(element.getAnnotation(Key.class)).map(Key::value).orElse(usual);
    }

    private static Type argument(Type type, int index) {
        if (type instanceof ParameterizedType generic) {
            return generic.getActualTypeArguments()[index];
        }
        throw new IllegalArgumentException(type + " lacks its type argument");
    }
}
