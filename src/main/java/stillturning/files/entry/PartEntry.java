package stillturning.files.entry;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.parts.PartValues;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Example;
import stillturning.quantity.field.Fields;
import stillturning.quantity.field.GoesWith;
import stillturning.quantity.field.GrowsWithVolts;
import stillturning.quantity.field.Key;
import stillturning.quantity.field.OfDimension;
import stillturning.quantity.field.SetsSize;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Kinds;
import stillturning.yaml.notation.Written;

/**
 * A part as written, in a candidate's file or in the catalogue. What is left out, the catalogue
 * fills in.
 *
 * @param said what every part may say
 * @param values what a part of its kind may say
 */
public record PartEntry(PartKind kind, Said said, Written values) {

    /** How it is read: {@code is:} says the kind, the kind says the rest. */
    static final Kinds<Said, PartEntry> KINDS =
            new Kinds<>("is", Said.class, recordsByWord(), PartEntry::of);

    /** What may be said of every part. */
    public record Said(
            @Describes("What a person calls it; its name if not written.") Optional<String> label,
            @Describes("Zone where it sits; that of what comes before it if not written.")
                    Optional<String> zone,
            @Describes("Class in the catalogue; the kind's first if not written.") @Key("class")
                    Optional<String> ofClass,
            @Describes("Weight.") @OfDimension(value = Dimension.MASS, least = "0 kg")
                    Optional<Given> mass,
            @Describes("Price.") Optional<Price> price) {

        static final Said NOTHING = inClass(Optional.empty());

        static Said inClass(Optional<String> name) {
            return new Said(
                    Optional.empty(), Optional.empty(), name, Optional.empty(), Optional.empty());
        }

        private Said times(double size) {
            return size == 1
                    ? this
                    : new Said(
                            label,
                            zone,
                            ofClass,
                            mass.map(m -> Sized.times(m, size)),
                            price.map(p -> Sized.times(p, size)));
        }

        private Said filledFrom(Said other) {
            return new Said(
                    label.or(() -> other.label),
                    zone.or(() -> other.zone),
                    ofClass.or(() -> other.ofClass),
                    mass.or(() -> other.mass),
                    price.or(() -> other.price));
        }
    }

    private static Map<String, Class<?>> recordsByWord() {
        Map<String, Class<?>> records = new LinkedHashMap<>();
        for (PartKind kind : PartKinds.all()) {
            kind.values().ifPresent(type -> records.put(kind.word(), type));
        }
        return records;
    }

    private static PartEntry of(String word, Said said, Written values) {
        return new PartEntry(PartKinds.called(word).orElseThrow(), said, values);
    }

    /**
     * One that a run makes.
     *
     * @param values what is said of it, by key
     */
    public static PartEntry made(
            PartKind kind, Optional<String> ofClass, Map<String, Object> values) {
        return new PartEntry(
                kind, Said.inClass(ofClass), new Written(kind.values().orElseThrow(), values));
    }

    /** Zone where it sits, if that is written. */
    public Optional<String> zone() {
        return said.zone();
    }

    /** Class in the catalogue, if that is written. */
    public Optional<String> ofClass() {
        return said.ofClass();
    }

    /**
     * The same with what it leaves open taken from another of its kind.
     *
     * @throws IllegalArgumentException if the two are not of one kind
     */
    public PartEntry filledFrom(PartEntry other) {
        if (!kind.equals(other.kind)) {
            throw new IllegalArgumentException("a " + kind.name() + " is no " + other.kind.name());
        }
        return new PartEntry(kind, said.filledFrom(other.said), values.filledFrom(other.values));
    }

    /**
     * The same, as one of the size that another of its kind states: what a stated value makes
     * larger weighs and costs more, and what goes with a stated value follows it.
     */
    PartEntry sizedAs(PartEntry stated) {
        double size = 1;
        Written sized = values;
        for (RecordComponent field : fields(kind)) {
            String key = Fields.keyOf(field);
            if (field.isAnnotationPresent(SetsSize.class)) {
                size *= ratio(stated, key);
            }
            double factor = 1;
            for (GoesWith other : field.getAnnotationsByType(GoesWith.class)) {
                factor *= Math.pow(ratio(stated, other.value()), other.power());
            }
            sized = factor == 1 ? sized : scaled(sized, key, factor);
        }
        return new PartEntry(kind, said.times(size), sized);
    }

    private static Written scaled(Written of, String key, double factor) {
        return of.value(key)
                .map(value -> of.with(key, Sized.times((Given) value, factor)))
                .orElse(of);
    }

    /** How many times as much another states under a key; 1 where one of the two does not. */
    private double ratio(PartEntry stated, String key) {
        return stated.values
                .si(key)
                .flatMap(other -> values.si(key).map(own -> other / own))
                .filter(ratio -> ratio > 0 && Double.isFinite(ratio))
                .orElse(1.0);
    }

    /** Keys of what a part of its kind must say and neither it nor its class does. */
    public List<String> open() {
        return values.open();
    }

    /**
     * What is known of the part.
     *
     * @throws IllegalArgumentException if its values contradict each other
     * @throws IllegalStateException if something is still open
     */
    public PartValues complete() {
        return (PartValues) values.complete();
    }

    /** The same with every value changed, in the order of its fields. */
    PartEntry mapped(String path, Values.ValueReplacement change) {
        Said own = Values.mapped(said, path, change);
        return new PartEntry(kind, own, Values.mapped(values, path, change));
    }

    /** What new parts of a kind are given where no class can know it, as YAML text by key. */
    public static Map<String, String> examples(PartKind kind) {
        Map<String, String> examples = new LinkedHashMap<>();
        for (RecordComponent field : fields(kind)) {
            Optional.ofNullable(field.getAnnotation(Example.class))
                    .ifPresent(example -> examples.put(Fields.keyOf(field), example.value()));
        }
        return examples;
    }

    /** Quantities of a kind that are others at another nominal voltage: its power, by key. */
    public static Map<String, Integer> powersOfVolts(PartKind kind) {
        Map<String, Integer> powers = new LinkedHashMap<>();
        for (RecordComponent field : fields(kind)) {
            Optional.ofNullable(field.getAnnotation(GrowsWithVolts.class))
                    .ifPresent(grows -> powers.put(Fields.keyOf(field), grows.power()));
        }
        return powers;
    }

    private static List<RecordComponent> fields(PartKind kind) {
        return kind.values().map(type -> List.of(type.getRecordComponents())).orElse(List.of());
    }
}
