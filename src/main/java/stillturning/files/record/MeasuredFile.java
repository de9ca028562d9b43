package stillturning.files.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.record.MeasuredEntry.Item;
import stillturning.files.record.MeasuredEntry.Prediction;
import stillturning.yaml.ChangedOnDisk;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Problem;
import stillturning.yaml.Spelling;
import stillturning.yaml.Splice;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** The record of a candidate, beside its study: everything that was measured, day after day. */
public final class MeasuredFile {

    /** Folder inside the study's. */
    public static final String FOLDER = "measured";

    private static final String HEAD =
            "# What was measured: entries are added behind the others and never changed.\n";

    private static final Set<String> OF_ENTRY = Set.of("date", "by", "study", "items");
    private static final Set<String> OF_ITEM =
            Set.of("what", "says", "measured", "predicted", "least", "most", "verdict", "from");

    private final Path file;
    private final Optional<YamlDocument> document;
    private final List<Problem> problems = new ArrayList<>();
    private final List<MeasuredEntry> entries = new ArrayList<>();

    private MeasuredFile(Path file, Optional<YamlDocument> document) {
        this.file = file;
        this.document = document;
        document.ifPresent(this::read);
    }

    /**
     * The record of a candidate; one without entries where there is no file yet.
     *
     * @throws IOException if it cannot be read
     */
    public static MeasuredFile of(Path study, String candidate) throws IOException {
        Path file = study.resolve(FOLDER).resolve(candidate + ".yaml");
        return new MeasuredFile(
                file, Files.exists(file) ? Optional.of(YamlDocument.read(file)) : Optional.empty());
    }

    public Path file() {
        return file;
    }

    /** What is wrong with it. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** In the order in which they were added. */
    public List<MeasuredEntry> entries() {
        return List.copyOf(entries);
    }

    /**
     * Adds an entry behind the others.
     *
     * @return whether it was added: not if just the same is there already
     * @throws ChangedOnDisk if the file is not what it was when it was read
     * @throws IOException if it cannot be written
     */
    public boolean add(MeasuredEntry entry) throws IOException {
        if (entries.contains(entry)) {
            return false;
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        if (document.isPresent()) {
            String before = document.get().text();
            String added = (before.endsWith("\n") ? "" : "\n") + entry.text();
            document.get().with(new Splice(before.length(), "", added)).save();
        } else {
            YamlDocument.of(file, HEAD + entry.text()).save();
        }
        return true;
    }

    private void read(YamlDocument written) {
        problems.addAll(written.problems());
        if (problems.isEmpty()) {
            written.value().ifPresent(this::read);
        }
    }

    private void read(YamlValue value) {
        value.fold(
                text -> told("", "the record is no list of entries"),
                list -> entries(list),
                map -> told("", "the record is no list of entries"));
    }

    private boolean entries(YamlValue.Items list) {
        for (int i = 0; i < list.items().size(); i++) {
            entry(DocumentPlaces.item("", i), list.items().get(i));
        }
        return true;
    }

    private void entry(String path, YamlValue value) {
        Map<String, YamlValue> fields = fields(path, value, OF_ENTRY);
        if (fields.size() < OF_ENTRY.size()) {
            return;
        }
        String date = text(path, fields, "date");
        if (!FormReader.isDay(date)) {
            told(DocumentPlaces.under(path, "date"), "\"" + date + "\" is no day");
        }
        List<Item> items = new ArrayList<>();
        Optional.ofNullable(fields.get("items"))
                .ifPresent(
                        all ->
                                all.fold(
                                        text -> told(path, "items are no list"),
                                        list -> items(path, list, items),
                                        map -> told(path, "items are no list")));
        entries.add(
                new MeasuredEntry(
                        date, text(path, fields, "by"), text(path, fields, "study"), items));
    }

    private boolean items(String path, YamlValue.Items list, List<Item> into) {
        String items = DocumentPlaces.under(path, "items");
        for (int i = 0; i < list.items().size(); i++) {
            String at = DocumentPlaces.item(items, i);
            Map<String, YamlValue> fields = fields(at, list.items().get(i), OF_ITEM);
            if (fields.size() == OF_ITEM.size()) {
                into.add(
                        new Item(
                                text(at, fields, "what"),
                                text(at, fields, "says"),
                                text(at, fields, "measured"),
                                new Prediction(
                                        text(at, fields, "predicted"),
                                        text(at, fields, "least"),
                                        text(at, fields, "most")),
                                text(at, fields, "verdict"),
                                text(at, fields, "from")));
            }
        }
        return true;
    }

    /** The fields of a mapping that has just these keys; fewer after a problem was told. */
    private Map<String, YamlValue> fields(String path, YamlValue value, Set<String> keys) {
        Map<String, YamlValue> fields = new LinkedHashMap<>();
        value.fold(
                text -> told(path, "a text does not belong here"),
                list -> told(path, "a list does not belong here"),
                map -> {
                    for (YamlValue.Field field : map.fields()) {
                        if (keys.contains(field.key())) {
                            fields.put(field.key(), field.value());
                        } else {
                            told(
                                    DocumentPlaces.under(path, field.key()),
                                    "\""
                                            + field.key()
                                            + "\" does not belong here; "
                                            + Spelling.choice(field.key(), keys));
                        }
                    }
                    return true;
                });
        keys.stream()
                .sorted()
                .filter(key -> !fields.containsKey(key) && problems.isEmpty())
                .forEach(key -> told(path, "\"" + key + "\" is missing"));
        return fields;
    }

    private String text(String path, Map<String, YamlValue> fields, String key) {
        return Optional.ofNullable(fields.get(key))
                .map(
                        value ->
                                value.<String>fold(
                                        text -> text.text(),
                                        list -> wrong(path, key),
                                        map -> wrong(path, key)))
                .orElse("");
    }

    private String wrong(String path, String key) {
        told(DocumentPlaces.under(path, key), "this is no text");
        return "";
    }

    private boolean told(String path, String wrong) {
        String right = "take back the change, or move the file away to begin anew";
        document.ifPresent(d -> problems.add(d.places().problem(path, wrong, right)));
        return true;
    }
}
