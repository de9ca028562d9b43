package stillturning.desktop.viewmodel.draw;

import java.util.List;
import java.util.Optional;
import stillturning.files.StudyForms;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.shape.Form;
import stillturning.yaml.shape.FormField;

/**
 * A place of a file that has a form.
 *
 * @param inStudy whether it stands in the file that all candidates share
 * @param keys the keys that lead there
 * @param only the fields to be shown; all of them if empty
 */
record FormPlace(boolean inStudy, List<String> keys, List<String> only) {

    static FormPlace candidate(String... keys) {
        return new FormPlace(false, List.of(keys), List.of());
    }

    static FormPlace study(String... keys) {
        return new FormPlace(true, List.of(keys), List.of());
    }

    /** The same place with these fields of it. */
    FormPlace only(List<String> fields) {
        return new FormPlace(inStudy, keys, fields);
    }

    boolean shows(FormField field) {
        return only.isEmpty() || only.contains(field.key());
    }

    Optional<Form> form(YamlDocument study, YamlDocument candidate) {
        StudyForms forms = new StudyForms(study);
        String[] at = keys.toArray(String[]::new);
        return inStudy ? forms.study(at) : forms.candidate(candidate, at);
    }

    /** Name to be shown above it. */
    String title() {
        return keys.isEmpty()
                ? (inStudy ? "The study" : "The candidate")
                : String.join(" \u203A ", keys).replace('-', ' ');
    }

    /** The feeds of a load, if it has any. */
    static Optional<FormPlace> feeds(YamlDocument candidate, String load) {
        FormPlace feeds = candidate("feeds");
        List<String> own =
                feeds.form(candidate, candidate).stream()
                        .flatMap(form -> form.fields().stream())
                        .map(FormField::key)
                        .filter(key -> key.equals(load) || key.startsWith(load + "."))
                        .toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(feeds.only(own));
    }
}
