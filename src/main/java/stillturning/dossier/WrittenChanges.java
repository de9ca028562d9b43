package stillturning.dossier;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.StudyReader;
import stillturning.report.change.TextChange;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Place;
import stillturning.yaml.YamlDocument;

/**
 * What is written otherwise in the files of two states of a study. Comments, order of keys and
 * layout are no change.
 */
public final class WrittenChanges {

    private WrittenChanges() {}

    /** Every value that differs, file by file in the order in which it stands there. */
    public static List<TextChange> between(StudyReader before, StudyReader after) {
        Map<String, YamlDocument> was = byName(before);
        Map<String, YamlDocument> is = byName(after);
        Set<String> names = new LinkedHashSet<>(is.keySet());
        names.addAll(was.keySet());
        List<TextChange> changes = new ArrayList<>();
        for (String name : names) {
            changes.addAll(
                    between(
                            name,
                            Optional.ofNullable(was.get(name)),
                            Optional.ofNullable(is.get(name))));
        }
        return changes;
    }

    private static Map<String, YamlDocument> byName(StudyReader reader) {
        Map<String, YamlDocument> all = new LinkedHashMap<>();
        reader.documents().forEach(d -> all.put(name(d.file()), d));
        return all;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static List<TextChange> between(
            String file, Optional<YamlDocument> before, Optional<YamlDocument> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return List.of(
                    new TextChange(
                            file,
                            0,
                            "the whole file",
                            before.isPresent() ? "there" : "",
                            after.isPresent() ? "there" : ""));
        }
        Map<String, Value> was = values(before.get());
        Map<String, Value> is = values(after.get());
        Set<String> paths = new LinkedHashSet<>(is.keySet());
        paths.addAll(was.keySet());
        List<TextChange> changes = new ArrayList<>();
        for (String path : paths) {
            String then = Optional.ofNullable(was.get(path)).map(Value::text).orElse("");
            String now = Optional.ofNullable(is.get(path)).map(Value::text).orElse("");
            if (!then.equals(now)) {
                int line = Optional.ofNullable(is.get(path)).map(Value::line).orElse(0);
                changes.add(new TextChange(file, line, path, then, now));
            }
        }
        return changes;
    }

    /** A plain value and its place. */
    private record Value(String text, Place place) {
        int line() {
            return place.line();
        }
    }

    /** By path, in the order in which they stand in the file. */
    private static Map<String, Value> values(YamlDocument document) {
        DocumentPlaces places = document.places();
        Map<String, Value> all = new HashMap<>();
        for (String path : places.paths()) {
            Optional<String> text = places.text(path);
            Optional<Place> place = places.value(path);
            if (text.isPresent() && place.isPresent()) {
                all.put(path, new Value(text.get(), place.get()));
            }
        }
        Map<String, Value> values = new LinkedHashMap<>();
        all.entrySet().stream()
                .sorted(
                        Comparator.<Map.Entry<String, Value>>comparingInt(e -> e.getValue().line())
                                .thenComparingInt(e -> e.getValue().place.column()))
                .forEach(e -> values.put(e.getKey(), e.getValue()));
        return values;
    }
}
