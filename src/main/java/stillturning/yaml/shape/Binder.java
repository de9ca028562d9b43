package stillturning.yaml.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.BindResult;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.notation.Discriminator;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.GivenGauge;
import stillturning.yaml.notation.Kinds;
import stillturning.yaml.notation.TextForm;
import stillturning.yaml.notation.Written;

/**
 * Reads documents into records. A component is a {@link String}, a {@code boolean} (written {@code
 * yes} or {@code no}), an {@code int} or {@code long}, a {@code double} with {@link Bounds}, an
 * enum, a {@link stillturning.quantity.Quantity} or {@link Given} with {@link OfDimension}, a
 * {@link stillturning.quantity.WireGauge} or {@link GivenGauge}, a record, a sealed interface of
 * records with {@link Discriminator}, a type with a {@link TextForm}, or a {@link List}, a {@code
 * Map<String, ...>} or an {@link Optional} of these. Every component must be written unless it is
 * an {@link Optional} or has a {@link Default}. A type with a {@link TextForm} that is also a
 * record or a sealed interface may be written either way, unless it was given an example of its
 * text.
 */
public final class Binder {

    private final Map<Class<?>, TextNotation> forms;
    private final Map<Class<?>, Kinds<?, ?>> kinds;
    private final Shapes shapes;

    /** A binder that knows no text forms yet. */
    public Binder() {
        this(Map.of(), Map.of());
    }

    private Binder(Map<Class<?>, TextNotation> forms, Map<Class<?>, Kinds<?, ?>> kinds) {
        this.forms = Collections.unmodifiableMap(forms);
        this.kinds = Collections.unmodifiableMap(kinds);
        this.shapes = new Shapes(this.forms, this.kinds);
    }

    /** The same binder, which also reads a type as one of several kinds. */
    public <T> Binder with(Class<T> type, Kinds<?, T> ofType) {
        Map<Class<?>, Kinds<?, ?>> more = new LinkedHashMap<>(kinds);
        more.put(type, ofType);
        return new Binder(forms, more);
    }

    /** The same binder, which reads what is said of a record from text and from nothing else. */
    public Binder withWritten(Class<?> type, TextForm<Written> form, String example) {
        return with(type, new TextNotation(form, Optional.of(example)));
    }

    /** The same binder, which also reads a type from text. */
    public <T> Binder with(Class<T> type, TextForm<T> form) {
        return with(type, new TextNotation(form, Optional.empty()));
    }

    /** The same binder, which reads a type from text and from nothing else. */
    public <T> Binder with(Class<T> type, TextForm<T> form, String example) {
        return with(type, new TextNotation(form, Optional.of(example)));
    }

    private Binder with(Class<?> type, TextNotation notation) {
        Map<Class<?>, TextNotation> more = new LinkedHashMap<>(forms);
        more.put(type, notation);
        return new Binder(more, kinds);
    }

    /**
     * Reads a document as a record or as one kind of a sealed interface.
     *
     * @throws IllegalArgumentException if the type is none that can be bound
     */
    public <T> BindResult<T> bind(YamlDocument document, Class<T> type) {
        Binding binding = new Binding(document.places());
        Shape shape = shapeOf(type);
        Optional<T> value =
                document.root().flatMap(tree -> shape.bind(tree, "", binding)).map(type::cast);
        List<Problem> problems = new ArrayList<>(document.problems());
        problems.addAll(binding.problems());
        Collections.sort(problems);
        if (problems.isEmpty()) {
            return new BindResult<>(value, value, problems, document.places());
        }
        DocumentPlaces places =
                new DocumentPlaces(document.file(), document.text(), document.asFarAsRead());
        Binding lenient = Binding.lenient(places);
        Optional<T> part =
                document.asFarAsRead()
                        .flatMap(tree -> shape.bind(tree, "", lenient))
                        .map(type::cast);
        return new BindResult<>(Optional.empty(), part, problems, places);
    }

    Shape shapeOf(Class<?> type) {
        return shapes.of(type);
    }
}
