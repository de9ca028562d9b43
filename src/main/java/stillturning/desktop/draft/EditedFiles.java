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

    Optional<EditedFile> sheet(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The file's document, unless it is deleted or was never there. */
    Optional<YamlDocument> document(String name) {
        return sheet(name).flatMap(EditedFile::now);
    }

    /** Texts of all files that are there. */
    SortedMap<String, String> texts() {
        SortedMap<String, String> texts = new TreeMap<>();
        byName.forEach((name, sheet) -> sheet.text().ifPresent(t -> texts.put(name, t)));
        return texts;
    }

    SortedSet<String> unsaved() {
        SortedSet<String> unsaved = new TreeSet<>();
        byName.forEach(
                (name, sheet) -> {
                    if (sheet.isUnsaved()) {
                        unsaved.add(name);
                    }
                });
        return unsaved;
    }

    /** The same with another sheet in its place; one that is nowhere any more is left out. */
    EditedFiles with(String name, EditedFile sheet) {
        SortedMap<String, EditedFile> other = new TreeMap<>(byName);
        if (sheet.disk().isEmpty() && sheet.now().isEmpty()) {
            other.remove(name);
        } else {
            other.put(name, sheet);
        }
        return new EditedFiles(folder, other);
    }

    /** The same with another text in one file, whether it was there or not. */
    EditedFiles withText(String name, Optional<String> text) {
        return with(name, at(name).with(text));
    }

    /** The sheet of a name; an empty one if there is none. */
    EditedFile at(String name) {
        return sheet(name)
                .orElseGet(
                        () ->
                                new EditedFile(
                                        folder.resolve(name), Optional.empty(), Optional.empty()));
    }

    EditedFiles after(Step step) throws ChangeRefused {
        if (step instanceof Step.Edit edit) {
            return edited(edit.file(), List.of(edit.edit()));
        }
        if (step instanceof Step.Edits edits) {
            Optional<YamlDocument> now = document(edits.file());
            return now.isPresent() && isSame(now.get(), edits.before())
                    ? with(edits.file(), at(edits.file()).with(edits.after()))
                    : edited(edits.file(), edits.edits());
        }
        if (step instanceof Step.Replace replace) {
            return replaced(replace.file(), replace.text());
        }
        if (step instanceof Step.Typed typed) {
            return replaced(typed.file(), typed.text());
        }
        if (step instanceof Step.Create create) {
            refuseName(create.file());
            return withText(create.file(), Optional.of(sound(create.file(), create.text())));
        }
        if (step instanceof Step.Delete delete) {
            there(delete.file());
            refuseStudy(delete.file(), "deleted");
            return withText(delete.file(), Optional.empty());
        }
        return renamed((Step.Rename) step);
    }

    @SuppressWarnings("ReferenceEquality") // only the very same document is known to be sound
    private static boolean isSame(YamlDocument one, YamlDocument other) {
        return one == other;
    }

    private EditedFiles edited(String name, List<YamlEdit> edits) throws ChangeRefused {
        EditedFile sheet = there(name);
        YamlDocument document = sheet.now().orElseThrow();
        for (YamlEdit edit : edits) {
            document = edited(name, document, edit);
        }
        return with(name, sheet.with(document));
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

    private EditedFiles replaced(String name, String text) throws ChangeRefused {
        EditedFile sheet = there(name);
        return with(name, sheet.with(Optional.of(sound(name, text))));
    }

    private EditedFiles renamed(Step.Rename rename) throws ChangeRefused {
        EditedFile sheet = there(rename.file());
        refuseStudy(rename.file(), "renamed");
        refuseName(rename.to());
        return withText(rename.to(), sheet.text()).withText(rename.file(), Optional.empty());
    }

    private EditedFile there(String name) throws ChangeRefused {
        EditedFile sheet =
                sheet(name)
                        .filter(s -> s.now().isPresent())
                        .orElseThrow(
                                () ->
                                        new ChangeRefused(
                                                "there is no "
                                                        + name
                                                        + " here; look at the files"));
        if (!sheet.isText()) {
            Problem first = sheet.disk().orElseThrow().problems().get(0);
            throw new ChangeRefused(
                    name + " cannot be read: " + first.wrong() + "; " + first.right());
        }
        return sheet;
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
