package stillturning.dossier;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.ReadStudy;
import stillturning.files.entry.StudyEntry;
import stillturning.files.value.Assumption;
import stillturning.parts.Part;
import stillturning.quantity.field.Fields;
import stillturning.quantity.field.MeasuredBy;

/** How each value of a study is found out, as the values themselves say. */
final class Measuring {

    private static final String PARTS = "parts";

    private final ReadStudy read;

    Measuring(ReadStudy read) {
        this.read = read;
    }

    /** Empty where nobody has said. */
    String of(Assumption assumption) {
        List<String> steps =
                Stream.of(assumption.path().split("[.]", -1))
                        .map(step -> step.replaceFirst("\\[[0-9]+\\]$", ""))
                        .toList();
        Optional<RecordComponent> value =
                steps.get(0).equals(PARTS) && steps.size() > 2
                        ? ofPart(assumption.file(), steps)
                        : along(StudyEntry.class, steps);
        return value.flatMap(c -> Optional.ofNullable(c.getAnnotation(MeasuredBy.class)))
                .map(MeasuredBy::value)
                .orElse("");
    }

    private Optional<RecordComponent> ofPart(String file, List<String> steps) {
        return read.study().stream()
                .flatMap(study -> study.candidates().stream())
                .filter(candidate -> file.startsWith(candidate.id() + "."))
                .flatMap(candidate -> candidate.part(steps.get(1)).stream())
                .findFirst()
                .map(Part::kind)
                .flatMap(kind -> kind.values())
                .flatMap(values -> along(values, steps.subList(2, steps.size())));
    }

    /** The component that a path leads to; a name in a map is no component. */
    private static Optional<RecordComponent> along(Class<?> from, List<String> steps) {
        Class<?> in = from;
        Optional<RecordComponent> found = Optional.empty();
        boolean named = false;
        for (String step : steps) {
            if (named) {
                named = false;
            } else {
                found = component(in, step);
                if (found.isEmpty()) {
                    return found;
                }
                named = found.get().getType() == Map.class;
                in = held(found.get().getGenericType());
            }
        }
        return found;
    }

    private static Optional<RecordComponent> component(Class<?> in, String key) {
        return in.isRecord()
                ? Arrays.stream(in.getRecordComponents())
                        .filter(c -> Fields.keyOf(c).equals(key))
                        .findFirst()
                : Optional.empty();
    }

    /** What a value holds in the end: of a list, a map or an optional one its last argument. */
    private static Class<?> held(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            return held(arguments[arguments.length - 1]);
        }
        return type instanceof Class<?> plain ? plain : Object.class;
    }
}
