package stillturning.files.edit;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.files.edit.CandidateEdits.LeverConfiguration;
import stillturning.files.edit.CandidateEdits.NewPart;
import stillturning.fuzz.Promises;
import stillturning.fuzz.Seeds;
import stillturning.model.Terminal;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

/**
 * Edits, one a line, in a candidate's text, which follows behind an empty line or is a sound one:
 * each is made or refused with a word, leaves a text that can be read, and says what was meant.
 */
public final class EditFuzz {

    private static final Path FILE = Path.of("fuzzed", "bare.yaml");
    private static final YamlDocument STUDY =
            Seeds.document("files.StudyFuzz/bare.yaml", "study.yaml");
    private static final YamlDocument SOUND =
            Seeds.document("files.CandidateFuzz/bare.yaml", "bare.yaml");
    private static final int MOST_EDITS = 12;

    private EditFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        String[] halves = Promises.text(input).split("\n\n", 2);
        YamlDocument document =
                halves.length > 1 && !halves[1].isBlank()
                        ? YamlDocument.of(FILE, halves[1])
                        : SOUND;
        for (String line : halves[0].lines().limit(MOST_EDITS).toList()) {
            try {
                FileChange change = change(line.split(" ", 4), document);
                check(change, document);
                document = change.after();
            } catch (ChangeRefused refused) {
                Promises.hold(refused.why().length() > 10, "refused without a word: " + line);
            }
        }
    }

    private static void check(FileChange change, YamlDocument before) {
        String shown = change.name() + " in\n" + before.text() + "\nleads to\n";
        String after = change.after().text();
        Promises.hold(change.after().problems().isEmpty(), shown + after);
        Promises.hold(change.before() == before, shown + after);
        YamlDocument again = before;
        try {
            for (YamlEdit edit : change.edits()) {
                again = edit.on(again).document();
            }
        } catch (EditRefused refused) {
            throw new AssertionError(shown + after, refused);
        }
        Promises.hold(again.text().equals(after), shown + after + "\nand then to\n" + again.text());
        YamlDocument read = YamlDocument.of(FILE, after);
        Promises.hold(read.value().equals(change.after().value()), shown + after);
    }

    private static FileChange change(String[] words, YamlDocument on) throws ChangeRefused {
        CandidateEdits edits = new CandidateEdits(on, STUDY);
        String one = word(words, 1);
        String two = word(words, 2);
        String three = word(words, 3);
        return switch (words[0]) {
            case "add" -> edits.add(new NewPart(one, given(three), two, Map.of()));
            case "delete" -> deleted(edits, names(words), on);
            case "duplicate" -> edits.duplicate(names(words));
            case "rename" -> renamed(edits, one, two, on);
            case "set" -> written(edits.set(one, two, three), "parts", one, two, three);
            case "clear" -> edits.clear(one, two);
            case "write" -> edits.setAt(one, two, three);
            case "take-out" -> edits.clearAt(one);
            case "put" -> edits.position(when(one), two, three);
            case "join" -> edits.join(terminal(one), terminal(two), given(three));
            case "cut" -> edits.cut(one);
            case "insert" -> edits.insert(one, terminal(two), at(three));
            case "leave-out" -> edits.leaveOut(one);
            case "rename-load" -> new LoadEdits(on).rename(one, two);
            case "delete-load" -> new LoadEdits(on).delete(one);
            default -> edits.title(one + " " + two + " " + three);
        };
    }

    private static FileChange deleted(CandidateEdits edits, Set<String> parts, YamlDocument on)
            throws ChangeRefused {
        FileChange change = edits.delete(parts);
        Set<String> left = new TreeSet<>(new CandidateOutline(on).parts().keySet());
        left.removeAll(parts);
        Set<String> there = new CandidateOutline(change.after()).parts().keySet();
        Promises.hold(there.equals(left), change.name() + ": " + there + " for " + left);
        return change;
    }

    private static FileChange renamed(CandidateEdits edits, String from, String to, YamlDocument on)
            throws ChangeRefused {
        FileChange change = edits.rename(from, to);
        Map<String, ?> before = new TreeMap<>(new CandidateOutline(on).parts());
        Map<String, ?> after = new TreeMap<>(new CandidateOutline(change.after()).parts());
        Promises.hold(before.size() == after.size(), change.name() + ": " + after.keySet());
        Promises.hold(after.containsKey(to), change.name() + ": " + after.keySet());
        FileChange back = new CandidateEdits(change.after(), STUDY).rename(to, from);
        Promises.hold(
                back.after().value().equals(on.value()),
                change.name() + " and back: " + back.after().text() + " for " + on.text());
        return change;
    }

    private static FileChange written(
            FileChange change, String section, String part, String key, String text) {
        Optional<String> there =
                new CandidateOutline(change.after()).all().under(section).under(part).text(key);
        Promises.hold(there.equals(Optional.of(text)), change.name() + " says " + there);
        return change;
    }

    private static String word(String[] words, int at) {
        return at < words.length ? words[at] : "";
    }

    private static Optional<String> given(String word) {
        return Optional.of(word).filter(w -> !w.isEmpty());
    }

    private static Set<String> names(String[] words) {
        return new TreeSet<>(List.of(Arrays.copyOfRange(words, 1, words.length)));
    }

    private static LeverConfiguration when(String word) {
        return switch (word) {
            case "off" -> LeverConfiguration.MASTER_OFF;
            case "starting" -> LeverConfiguration.STARTING;
            default -> LeverConfiguration.FLIGHT;
        };
    }

    private static Terminal terminal(String word) {
        int at = word.indexOf('.');
        return at < 0
                ? new Terminal(word, "")
                : new Terminal(word.substring(0, at), word.substring(at + 1));
    }

    private static OptionalInt at(String word) {
        return word.matches("[0-9]") ? OptionalInt.of(Integer.parseInt(word)) : OptionalInt.empty();
    }
}
