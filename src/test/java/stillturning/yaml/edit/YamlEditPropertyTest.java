package stillturning.yaml.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Place;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.shape.Sample;

/**
 * Random edits of random documents, checked against an independent reader and plain collections.
 */
class YamlEditPropertyTest {

    private static final List<String> TEXTS =
            List.of(
                    "20 Ah",
                    "AWG 16",
                    "on",
                    "a: b",
                    "x # y",
                    "it's",
                    "say \"so\"",
                    "null",
                    "-",
                    "é µ Ω",
                    "",
                    "\ud83d\udd0b full",
                    "[x]",
                    "5",
                    " pad ",
                    "two\nlines",
                    "%",
                    "-5 °C",
                    "a,b",
                    "http://x/y",
                    "tab\there",
                    "back\\slash");

    static List<Long> seeds() {
        return new SplittableRandom(20261).longs(300).boxed().toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anEditChangesWhatItNamesAndNothingElse(long seed) throws EditRefused {
        SplittableRandom random = new SplittableRandom(seed);
        YamlDocument document = Sample.document(new RandomDocument(random).text());
        assertEquals(List.of(), document.problems(), () -> "seed " + seed + "\n" + document.text());
        YamlDocument current = document;
        for (int i = 0; i < 12; i++) {
            YamlEdit edit = randomEdit(current, random);
            String context = edit + ", seed " + seed + ", edit " + i + "\n" + current.text();
            Edited edited = edit.on(current);
            assertEquals(expected(current, edit), load(edited.document().text()), context);
            assertUntouchedLinesSurvive(current, edit, edited.document().text(), context);
            assertEquals(
                    current.text(),
                    edited.document().with(edited.splice().inverse()).text(),
                    context);
            current = edited.document();
        }
    }

    private static YamlEdit randomEdit(YamlDocument document, SplittableRandom random) {
        List<String> paths = new ArrayList<>(document.places().paths());
        while (true) {
            String path = paths.get(random.nextInt(paths.size()));
            Tree tree = document.places().tree(path).orElseThrow();
            int kind = random.nextInt(5);
            if (kind == 0) {
                return new YamlEdit.Set(path, randomValue(random, 0));
            } else if (kind == 1 && tree instanceof Tree.MappingNode) {
                return new YamlEdit.AddField(
                        path, "new-" + random.nextInt(1_000_000), randomValue(random, 0));
            } else if (kind == 2 && tree instanceof Tree.ListNode) {
                return new YamlEdit.AddItem(path, randomValue(random, 0));
            } else if (kind == 3 && !path.isEmpty()) {
                return new YamlEdit.Remove(path);
            } else if (kind == 4 && document.places().key(path).isPresent()) {
                return new YamlEdit.Rename(path, "renamed " + random.nextInt(1_000_000));
            }
        }
    }

    private static YamlValue randomValue(SplittableRandom random, int depth) {
        int kind = depth > 2 ? 0 : random.nextInt(4);
        if (kind == 2) {
            List<YamlValue> items = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                items.add(randomValue(random, depth + 1));
            }
            return new YamlValue.Items(items);
        }
        if (kind == 3) {
            List<YamlValue.Field> fields = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                fields.add(
                        new YamlValue.Field(
                                "k" + i + random.nextInt(100), randomValue(random, depth + 1)));
            }
            return new YamlValue.Fields(fields);
        }
        return YamlValue.text(TEXTS.get(random.nextInt(TEXTS.size())));
    }

    // ---- the same edit on plain collections

    private static @Nullable Object load(String text) {
        return normal(loaded(text));
    }

    // a block of text on a last line without line break would gain one by whatever is added below
    private static @Nullable Object loaded(String text) {
        return new Load(LoadSettings.builder().build())
                .loadFromString(text.endsWith("\n") ? text : text + "\n");
    }

    private static @Nullable Object normal(@Nullable Object loaded) {
        if (loaded instanceof Map<?, ?> map) {
            List<List<@Nullable Object>> entries = new ArrayList<>();
            map.forEach((k, v) -> entries.add(List.of(k, String.valueOf(normal(v)))));
            return "map" + entries;
        }
        if (loaded instanceof List<?> list) {
            return "list"
                    + list.stream().map(YamlEditPropertyTest::normal).map(String::valueOf).toList();
        }
        // an unwritten value and an empty text are told apart elsewhere
        return loaded == null ? "" : loaded.toString();
    }

    private static @Nullable Object expected(YamlDocument document, YamlEdit edit) {
        return normal(edited(loaded(document.text()), "", edit));
    }

    @SuppressWarnings("unchecked")
    private static @Nullable Object edited(@Nullable Object at, String path, YamlEdit edit) {
        if (edit instanceof YamlEdit.Set set && set.path().equals(path)) {
            return plain(set.value());
        }
        if (at instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            ((Map<String, @Nullable Object>) map)
                    .forEach(
                            (key, value) -> {
                                String below = DocumentPlaces.under(path, key);
                                if (edit instanceof YamlEdit.Rename rename
                                        && rename.path().equals(below)) {
                                    copy.put(rename.name(), value);
                                } else if (!(edit instanceof YamlEdit.Remove remove
                                        && remove.path().equals(below))) {
                                    copy.put(key, edited(value, below, edit));
                                }
                            });
            if (edit instanceof YamlEdit.AddField add && add.mapping().equals(path)) {
                copy.put(add.key(), plain(add.value()));
            }
            return copy;
        }
        if (at instanceof List<?> list) {
            List<@Nullable Object> copy = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                String below = DocumentPlaces.item(path, i);
                if (!(edit instanceof YamlEdit.Remove remove && remove.path().equals(below))) {
                    copy.add(edited(list.get(i), below, edit));
                }
            }
            if (edit instanceof YamlEdit.AddItem add && add.list().equals(path)) {
                copy.add(plain(add.value()));
            }
            return copy;
        }
        return at;
    }

    private static Object plain(YamlValue value) {
        if (value instanceof YamlValue.Items items) {
            return items.items().stream().map(YamlEditPropertyTest::plain).toList();
        }
        if (value instanceof YamlValue.Fields fields) {
            Map<String, Object> map = new LinkedHashMap<>();
            fields.fields().forEach(f -> map.put(f.key(), plain(f.value())));
            return map;
        }
        return ((YamlValue.Text) value).text();
    }

    // ---- lines that the edit does not name

    private static void assertUntouchedLinesSurvive(
            YamlDocument before, YamlEdit edit, String after, String context) {
        List<String> untouched = new ArrayList<>(before.text().lines().toList());
        int[] range = touchedLines(before, edit);
        untouched.subList(range[0], range[1]).clear();
        int found = 0;
        for (String line : after.lines().toList()) {
            if (found < untouched.size() && line.equals(untouched.get(found))) {
                found++;
            }
        }
        int kept = found;
        assertEquals(
                untouched.size(), found, () -> "lost: " + untouched.get(kept) + " by " + context);
    }

    /** First and after-last line, from 0, of what the edit may rewrite. */
    private static int[] touchedLines(YamlDocument document, YamlEdit edit) {
        DocumentPlaces places = document.places();
        String path;
        if (edit instanceof YamlEdit.AddField add) {
            path = add.mapping();
        } else if (edit instanceof YamlEdit.AddItem add) {
            path = add.list();
        } else if (edit instanceof YamlEdit.Set set) {
            path = set.path();
        } else if (edit instanceof YamlEdit.Remove remove) {
            path = remove.path();
        } else {
            path = ((YamlEdit.Rename) edit).path();
        }
        Tree tree = places.tree(path).orElseThrow();
        boolean adding = edit instanceof YamlEdit.AddField || edit instanceof YamlEdit.AddItem;
        boolean block = !(tree instanceof Tree.LeafNode) && !tree.flow();
        if (adding && block) {
            return new int[] {0, 0};
        }
        Tree parent = places.parent(path).map(Tree.class::cast).orElse(tree);
        boolean parentGoes =
                edit instanceof YamlEdit.Remove
                        && (((Tree.BranchNode) parent).children().size() == 1 || parent.flow());
        if (parentGoes) {
            path = places.pathOf(parent);
            tree = parent;
        }
        Place start =
                places.key(path)
                        .or(() -> Sample.document(document.text()).places().value(""))
                        .orElseThrow();
        int from = places.key(path).isPresent() ? start.line() : dashLine(document, path, tree);
        int to = (int) document.text().substring(0, tree.contentEnd()).lines().count();
        if (edit instanceof YamlEdit.Remove && !parentGoes) {
            to = ownCommentsEnd(document, to, parent.span().column());
        }
        if (edit instanceof YamlEdit.Remove
                && !parentGoes
                && !startsItsLine(document, path, tree)) {
            // the next member moves up beside the dash of an outer list
            List<String> lines = document.text().lines().toList();
            while (lines.get(to).isBlank()) {
                to++;
            }
            to++;
        }
        if (edit instanceof YamlEdit.Rename) {
            to = from;
        }
        return new int[] {from - 1, Math.max(from, to)};
    }

    private static int ownCommentsEnd(YamlDocument document, int to, int column) {
        List<String> lines = document.text().lines().toList();
        int end = to;
        for (int i = to; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean own = line.strip().startsWith("#") && line.indexOf('#') >= column;
            end = own ? i + 1 : end;
            if (!own && !line.isBlank()) {
                break;
            }
        }
        return end;
    }

    private static boolean startsItsLine(YamlDocument document, String path, Tree tree) {
        int line =
                document.places()
                        .key(path)
                        .map(Place::line)
                        .orElseGet(() -> dashLine(document, path, tree));
        int column = document.places().parent(path).map(p -> p.span().column()).orElse(1);
        String text = document.text().lines().toList().get(line - 1);
        return text.substring(0, column - 1).isBlank();
    }

    private static int dashLine(YamlDocument document, String path, Tree tree) {
        Tree parent = document.places().parent(path).map(Tree.class::cast).orElse(tree);
        int line = tree.span().line();
        if (parent == tree || parent.flow()) {
            return line;
        }
        List<String> lines = document.text().lines().toList();
        while (line > 1 && !lines.get(line - 1).startsWith("-", parent.span().column() - 1)) {
            line--;
        }
        return line;
    }
}
