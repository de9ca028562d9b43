package stillturning.files.record;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stillturning.files.record.FilledForm.Filled;
import stillturning.files.record.FilledForm.FilledValue;
import stillturning.files.record.FilledForm.Former;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Problem;
import stillturning.yaml.Spelling;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** Reads a form that was filled in. */
public final class FormReader {

    private static final Set<String> HEADS =
            Set.of(BlankForm.RECORD, BlankForm.STUDY, BlankForm.DATE, BlankForm.BY);

    /**
     * What came of reading.
     *
     * @param form what could be read; to be used only if there is no problem
     * @param problems by place
     */
    public record ReadForm(FilledForm form, List<Problem> problems) {
        public ReadForm {
            problems = List.copyOf(problems);
        }
    }

    private final YamlDocument document;
    private final String current;
    private final Map<String, Blank> blanks = new LinkedHashMap<>();
    private final Set<String> groups = new TreeSet<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<Filled> filled = new ArrayList<>();
    private final List<Former> former = new ArrayList<>();

    private FormReader(YamlDocument document, String current, List<Blank> known) {
        this.document = document;
        this.current = current;
        for (Blank blank : known) {
            blanks.put(blank.path(), blank);
            String group = blank.group();
            while (!group.isEmpty()) {
                groups.add(group);
                group = group.substring(0, Math.max(0, group.lastIndexOf('.')));
            }
        }
    }

    /**
     * Reads a form.
     *
     * @param candidate whose it must be
     * @param current fingerprint of the study as it is: what a form of another one says beside it
     *     is kept
     * @param known everything that may be filled in
     */
    public static ReadForm read(
            YamlDocument document, String candidate, String current, List<Blank> known) {
        return new FormReader(document, current, known).read(candidate);
    }

    private ReadForm read(String candidate) {
        problems.addAll(document.problems());
        if (problems.isEmpty()) {
            document.value()
                    .ifPresent(
                            value ->
                                    value.fold(
                                            text -> told("", "the form is no mapping"),
                                            list -> told("", "the form is no mapping"),
                                            map -> fields("", map)));
            whose(candidate);
            date();
        }
        problems.sort(null);
        return new ReadForm(
                new FilledForm(
                        head(BlankForm.STUDY),
                        head(BlankForm.DATE),
                        head(BlankForm.BY),
                        filled,
                        former),
                problems);
    }

    private String head(String key) {
        return document.places()
                .tree(key)
                .filter(tree -> !tree.isNull())
                .flatMap(tree -> document.textAt(key))
                .map(String::strip)
                .orElse("");
    }

    private void whose(String candidate) {
        if (!head(BlankForm.RECORD).equals(candidate)) {
            problem(
                    BlankForm.RECORD,
                    head(BlankForm.RECORD).isEmpty()
                            ? "the form does not say which candidate it is of"
                            : "the form is of candidate \""
                                    + Excerpt.of(head(BlankForm.RECORD))
                                    + "\"",
                    "write record: " + candidate + ", or name the other with --candidate");
        }
    }

    private void date() {
        String date = head(BlankForm.DATE);
        if (!date.isEmpty() && !isDay(date)) {
            problem(
                    BlankForm.DATE,
                    "\"" + Excerpt.of(date) + "\" is no day",
                    "write it as 2026-05-17");
        }
    }

    /** Whether a text is a day as it is written here. */
    public static boolean isDay(String text) {
        try {
            return LocalDate.parse(text).toString().equals(text);
        } catch (DateTimeParseException wrong) {
            return false;
        }
    }

    private boolean fields(String path, YamlValue.Fields map) {
        for (YamlValue.Field field : map.fields()) {
            String at = path.isEmpty() ? field.key() : path + "." + field.key();
            if (path.isEmpty() && HEADS.contains(field.key())) {
                continue;
            }
            Blank blank = blanks.get(at);
            if (blank != null) {
                blank(blank, field.value());
            } else if (groups.contains(at)) {
                field.value()
                        .fold(
                                text -> isEmpty(at) || told(at, "a text does not belong here"),
                                list -> told(at, "a list does not belong here"),
                                inner -> fields(at, inner));
            } else if (!nothingIn(at, field.value())) {
                unasked(path, at, field);
            }
        }
        return true;
    }

    private void unasked(String path, String at, YamlValue.Field field) {
        if (isOlder() && !path.isEmpty()) {
            former(at, field.value());
            return;
        }
        problems.add(
                document.places()
                        .problemAtKey(
                                at,
                                "nothing of this name is asked for here",
                                Spelling.choice(field.key(), keysIn(path))));
    }

    /** Whether it says of itself that it was made of another state of the study. */
    private boolean isOlder() {
        String made = head(BlankForm.STUDY);
        return !made.isEmpty() && !made.equals(current);
    }

    /** What was written into a blank that is no longer one is measured all the same. */
    private boolean former(String path, YamlValue value) {
        return value.fold(
                text -> isEmpty(path) || former.add(new Former(path, text.text().strip())),
                list -> told(path, "a list does not belong here"),
                map -> {
                    map.fields().forEach(f -> former(path + "." + f.key(), f.value()));
                    return true;
                });
    }

    /** What an older form asked for and nobody filled in is not missed. */
    private boolean nothingIn(String path, YamlValue value) {
        return value.fold(
                text -> isEmpty(path),
                list -> false,
                map ->
                        map.fields().stream()
                                .allMatch(f -> nothingIn(path + "." + f.key(), f.value())));
    }

    private boolean isEmpty(String path) {
        return document.places().tree(path).filter(Tree::isNull).isPresent();
    }

    private List<String> keysIn(String path) {
        String start = path.isEmpty() ? "" : path + ".";
        Set<String> keys = new TreeSet<>();
        for (Set<String> all : List.of(blanks.keySet(), groups)) {
            all.stream()
                    .filter(p -> p.startsWith(start))
                    .map(p -> p.substring(start.length()).split("\\.", 2)[0])
                    .forEach(keys::add);
        }
        return List.copyOf(keys);
    }

    private void blank(Blank blank, YamlValue value) {
        value.fold(
                text -> isEmpty(blank.path()) || filled(blank, text.text()),
                list -> told(blank.path(), "a list does not belong here"),
                map -> told(blank.path(), "nothing can stand under it"));
    }

    private boolean filled(Blank blank, String text) {
        FilledText form =
                new FilledText(
                        blank.notation(),
                        (offset, wrong, right) ->
                                problems.add(
                                        document.places()
                                                .problemInside(
                                                        blank.path(), offset, wrong, right)));
        List<FilledValue> values = form.read(text);
        if (!values.isEmpty()) {
            filled.add(new Filled(blank.path(), values, text.strip()));
        }
        return true;
    }

    private boolean told(String path, String wrong) {
        problem(path, wrong, "leave it as the form has it, and write behind the colons");
        return true;
    }

    private void problem(String path, String wrong, String right) {
        problems.add(document.places().problem(path, wrong, right));
    }
}
