package stillturning.desktop.draft;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.entry.Names;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

/** All files of a study; a step gives others and leaves these alone. */
final class EditedFiles {

    static final String ENDING = ".yaml";

    static final String STUDY = "study" + ENDING;
    private static final int MOST_CHARS = 4_000_000;

    private final Path folder;
    private final SortedMap<String, EditedFile> byName;

    EditedFiles(Path folder, SortedMap<String, EditedFile> byName) {
        this.folder = folder;
        this.byName = Collections.unmodifiableSortedMap(byName);
    }

    Collection<EditedFile> all() {
        return byName.values();
    }

    SortedSet<String> names() {
        return new TreeSet<>(byName.keySet());
    }

    /** The file's document, unless it is deleted or was never there. */
    Optional<YamlDocument> document(String name) {
        return at(name).now();
    }

    /** Texts of all files that are there. */
    SortedMap<String, String> texts() {
        SortedMap<String, String> texts = new TreeMap<>();
        byName.forEach((name, file) -> file.text().ifPresent(t -> texts.put(name, t)));
        return texts;
    }

    SortedSet<String> unsaved() {
        SortedSet<String> unsaved = new TreeSet<>();
        byName.entrySet().stream()
                .filter(e -> e.getValue().isUnsaved())
                .forEach(e -> unsaved.add(e.getKey()));
        return unsaved;
    }

    /** The same with another file in its place; one that is nowhere any more is left out. */
    EditedFiles with(String name, EditedFile file) {
        SortedMap<String, EditedFile> other = new TreeMap<>(byName);
        if (file.disk().isEmpty() && file.now().isEmpty()) {
            other.remove(name);
        } else {
            other.put(name, file);
        }
        return new EditedFiles(folder, other);
    }

    /** The same with another text in one file, whether it was there or not. */
    EditedFiles withText(String name, Optional<String> text) {
        return with(name, at(name).with(text));
    }

    /** The file of a name; an empty one if there is none. */
    EditedFile at(String name) {
        return Optional.ofNullable(byName.get(name))
                .orElseGet(() -> EditedFile.absent(folder.resolve(name)));
    }

    /** The same with the result of edits where the file is still what they were worked out on. */
    EditedFiles edited(DraftStep.Edits step) throws ChangeRefused {
        Optional<YamlDocument> now = document(step.file());
        return now.isPresent() && isSame(now.get(), step.before())
                ? with(step.file(), at(step.file()).with(step.after()))
                : edited(step.file(), step.edits());
    }

    /** The same with a file that was not there. */
    EditedFiles created(String name, String text) throws ChangeRefused {
        refuseName(name);
        return withText(name, Optional.of(sound(name, text)));
    }

    /** The same without a file. */
    EditedFiles deleted(String name) throws ChangeRefused {
        there(name);
        refuseStudy(name, "deleted");
        return withText(name, Optional.empty());
    }

    @SuppressWarnings("ReferenceEquality") // only the very same document is known to be sound
    private static boolean isSame(YamlDocument one, YamlDocument other) {
        return one == other;
    }

    /** The same with edits made in one file. */
    EditedFiles edited(String name, List<YamlEdit> edits) throws ChangeRefused {
        EditedFile file = there(name);
        YamlDocument document = file.now().orElseThrow();
        for (YamlEdit edit : edits) {
            document = edited(name, document, edit);
        }
        return with(name, file.with(document));
    }

    private static YamlDocument edited(String name, YamlDocument document, YamlEdit edit)
            throws ChangeRefused {
        if (!document.problems().isEmpty()) {
            throw ChangeRefused.unreadable(name, document.problems().get(0));
        }
        try {
            return edit.on(document).document();
        } catch (EditRefused refused) {
            throw ChangeRefused.by(name, refused);
        }
    }

    /** The same with another text in a file that is there. */
    EditedFiles replaced(String name, String text) throws ChangeRefused {
        EditedFile file = there(name);
        return with(name, file.with(Optional.of(sound(name, text))));
    }

    /** The same with a file under another name. */
    EditedFiles renamed(String name, String to) throws ChangeRefused {
        EditedFile file = there(name);
        refuseStudy(name, "renamed");
        refuseName(to);
        return withText(to, file.text()).withText(name, Optional.empty());
    }

    private EditedFile there(String name) throws ChangeRefused {
        EditedFile file = at(name);
        if (file.now().isEmpty()) {
            throw new ChangeRefused("there is no " + name + " here; look at the files");
        }
        if (!file.isText()) {
            Problem first = file.disk().orElseThrow().problems().get(0);
            throw new ChangeRefused(
                    name + " cannot be read: " + first.wrong() + "; " + first.right());
        }
        return file;
    }

    private void refuseName(String name) throws ChangeRefused {
        boolean plain =
                name.endsWith(ENDING)
                        && Names.isPlain(name.substring(0, name.length() - ENDING.length()));
        if (!plain) {
            throw new ChangeRefused(
                    "\""
                            + name
                            + "\" cannot be a file's name here; use lower case letters, digits and"
                            + " hyphens, and end it with "
                            + ENDING);
        }
        if (document(name).isPresent()) {
            throw new ChangeRefused(name + " is there already; take another name");
        }
    }

    private static void refuseStudy(String name, String what) throws ChangeRefused {
        if (name.equals(STUDY)) {
            throw new ChangeRefused(
                    STUDY + " cannot be " + what + ", since every candidate hangs on it");
        }
    }

    /** A text that can be written and read again. */
    private static String sound(String name, String text) throws ChangeRefused {
        if (text.length() > MOST_CHARS) {
            throw new ChangeRefused(name + " would be larger than 4 MB; split it");
        }
        if (text.startsWith("\ufeff")) {
            return text.substring(1);
        }
        for (int i = 0; i < text.length(); i++) {
            boolean alone =
                    Character.isSurrogate(text.charAt(i))
                            && !Character.isSupplementaryCodePoint(text.codePointAt(i))
                            && (i == 0
                                    || !Character.isSurrogatePair(
                                            text.charAt(i - 1), text.charAt(i)));
            if (alone) {
                throw new ChangeRefused(
                        name + " would hold half a character; paste the whole text again");
            }
        }
        return text;
    }
}
