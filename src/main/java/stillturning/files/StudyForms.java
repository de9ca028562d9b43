package stillturning.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.PartCatalogue.CatalogueKind;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.shape.Form;
import stillturning.yaml.shape.FormField;
import stillturning.yaml.shape.Forms;

/**
 * The forms of a study's files, place by place: what may be written there, what is, and what holds
 * where nothing is.
 */
public final class StudyForms {

    private static final Forms STUDY = new Forms(FileNotations.binder(), StudyEntry.class);
    private static final Forms CANDIDATE = new Forms(FileNotations.binder(), CandidateEntry.class);

    private final YamlDocument study;

    /** The forms of the study in this document, and of its candidates. */
    public StudyForms(YamlDocument study) {
        this.study = study;
    }

    /**
     * The form of a place in the study's own file: of a load ({@code "loads", "radio"}), of a phase
     * ({@code "phases", "0"}), of the whole (no keys); absent if the place has no fields.
     */
    public Optional<Form> study(String... keys) {
        List<String> at = List.of(keys);
        return STUDY.at(study, at).map(form -> form.with(f -> inStudy(at, f)));
    }

    /**
     * The form of a place in a candidate's file: of a part ({@code "parts", "main-bus"}), of a cue
     * ({@code "sees", "low-volts"}), of a procedure; absent if the place has no fields.
     */
    public Optional<Form> candidate(YamlDocument candidate, String... keys) {
        List<String> at = List.of(keys);
        return CANDIDATE
                .at(candidate, at)
                .map(form -> form.with(f -> inCandidate(candidate, at, f)));
    }

    private FormField inStudy(List<String> at, FormField field) {
        return switch (pattern(at) + field.key()) {
            case "loads.*.zone", "distances.*.from", "distances.*.to" ->
                    field.naming("zone", zones());
            case "loads.*.phases", "failures-in", "run-up-in" -> field.naming("phase", phases());
            case "engine.starter" -> field.naming("load", loads());
            default -> field;
        };
    }

    private FormField inCandidate(YamlDocument candidate, List<String> at, FormField field) {
        String place = pattern(at) + field.key();
        if (place.startsWith("parts.*.")) {
            return inPart(candidate, at, field);
        }
        return switch (place) {
            case "leaves-out", "sees.*.load", "sees.*.shown-by", "procedures.*.sheds" ->
                    field.naming("load", loads());
            case "procedures.*.when" ->
                    field.naming("cue", names(CANDIDATE.at(candidate, List.of("sees"))));
            case "sees.*.alternator" ->
                    field.naming("alternator", partsOf(candidate, "alternator"));
            default -> named(candidate, place, field);
        };
    }

    private static FormField named(YamlDocument candidate, String place, FormField field) {
        if (place.startsWith("returns.")) {
            return field.naming("ground", partsOf(candidate, "ground"));
        }
        List<String> positions =
                place.startsWith("positions.*.") ? positions(candidate, field.key()) : List.of();
        return positions.isEmpty() ? field : field.naming("position", positions);
    }

    /** Where a lever can stand; empty if that is not known. */
    private static List<String> positions(YamlDocument candidate, String lever) {
        String part = lever.contains(".") ? lever.substring(0, lever.indexOf('.')) : lever;
        return FileNotations.binder()
                .bind(candidate, CandidateEntry.class)
                .asFarAsRead()
                .flatMap(entry -> Optional.ofNullable(entry.parts().get(part)))
                .flatMap(entry -> positionsOn(entry, lever.substring(part.length())))
                .orElse(List.of());
    }

    private static Optional<List<String>> positionsOn(PartEntry entry, String suffix) {
        try {
            Part sample = PartCatalogue.shipped().sample(entry);
            return sample.levers().stream()
                    .filter(lever -> lever.name().equals(sample.id() + suffix))
                    .map(Lever::positions)
                    .findFirst();
        } catch (IllegalArgumentException contradicting) {
            return Optional.empty();
        }
    }

    private static Optional<String> classOf(YamlDocument candidate, String part) {
        return CANDIDATE
                .at(candidate, List.of("parts", part))
                .flatMap(form -> form.field("class"))
                .flatMap(FormField::text)
                .or(() -> kindOf(candidate, part).map(kind -> kind.classes().get(0).name()));
    }

    private FormField inPart(YamlDocument candidate, List<String> at, FormField field) {
        Optional<CatalogueKind> kind = kindOf(candidate, at.get(1));
        if (kind.isEmpty()) {
            return field;
        }
        List<String> classes =
                kind.get().classes().stream().map(PartCatalogue.PartClass::name).toList();
        if (at.size() == 2 && field.key().equals("zone")) {
            return field.naming("zone", zones());
        }
        if (at.size() == 2 && field.key().equals("class")) {
            return field.naming(kind.get().word() + " class", classes).otherwise(classes.get(0));
        }
        String ofClass = classOf(candidate, at.get(1)).orElse(classes.get(0));
        return PartCatalogue.shipped()
                .given(kind.get().word(), ofClass, at.subList(2, at.size()), field.key())
                .map(field::otherwise)
                .orElse(field);
    }

    private static Optional<CatalogueKind> kindOf(YamlDocument candidate, String part) {
        return CANDIDATE
                .at(candidate, List.of("parts", part))
                .flatMap(Form::kind)
                .flatMap(kind -> PartCatalogue.shipped().kind(kind.word()));
    }

    private static List<String> partsOf(YamlDocument candidate, String kind) {
        return names(CANDIDATE.at(candidate, List.of("parts"))).stream()
                .filter(p -> kindOf(candidate, p).filter(k -> k.word().equals(kind)).isPresent())
                .toList();
    }

    private List<String> zones() {
        return names(STUDY.at(study, List.of("zones")));
    }

    private List<String> loads() {
        return names(STUDY.at(study, List.of("loads")));
    }

    private List<String> phases() {
        List<String> names = new ArrayList<>();
        for (int i = 0; phase(i).isPresent(); i++) {
            phase(i).flatMap(f -> f.field("name")).flatMap(FormField::text).ifPresent(names::add);
        }
        return names;
    }

    private Optional<Form> phase(int index) {
        int written = STUDY.at(study, List.of("phases")).map(f -> f.fields().size()).orElse(0);
        return index < written
                ? STUDY.at(study, List.of("phases", String.valueOf(index)))
                : Optional.empty();
    }

    private static List<String> names(Optional<Form> form) {
        return form.map(f -> f.fields().stream().map(FormField::key).toList()).orElse(List.of());
    }

    /** The keys with a point behind each, names and numbers that people choose as a star. */
    private static String pattern(List<String> at) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < at.size(); i++) {
            pattern.append(i == 1 ? "*" : at.get(i)).append('.');
        }
        return pattern.toString();
    }
}
