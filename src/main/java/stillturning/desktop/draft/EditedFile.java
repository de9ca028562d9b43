package stillturning.desktop.draft;

import java.nio.file.Path;
import java.util.Optional;
import stillturning.yaml.Splice;
import stillturning.yaml.YamlDocument;

/**
 * One file of a study: as it was last read or saved, and as it is now; at least one of the two is
 * there, unless it is only about to be made.
 */
record EditedFile(Path file, Optional<YamlDocument> disk, Optional<YamlDocument> now) {

    /** One that is nowhere yet. */
    static EditedFile absent(Path file) {
        return new EditedFile(file, Optional.empty(), Optional.empty());
    }

    /** A file as it was just read. */
    static EditedFile read(YamlDocument document) {
        return new EditedFile(document.file(), Optional.of(document), Optional.of(document));
    }

    Optional<String> text() {
        return now.map(YamlDocument::text);
    }

    Optional<String> diskText() {
        return disk.map(YamlDocument::text);
    }

    boolean isUnsaved() {
        return !text().equals(diskText());
    }

    /** Whether its text is known; a file that is no text can be looked at by nobody. */
    boolean isText() {
        return disk.isEmpty() || disk.get().onDisk().isPresent();
    }

    /** The same with another text, or deleted. */
    EditedFile with(Optional<String> text) {
        return text.equals(text()) ? this : new EditedFile(file, disk, text.map(this::document));
    }

    /** The same with a document that was made from its own. */
    EditedFile with(YamlDocument edited) {
        return new EditedFile(file, disk, Optional.of(edited));
    }

    /** The same with something else on disk. */
    EditedFile onDisk(Optional<YamlDocument> other) {
        return new EditedFile(file, other, now);
    }

    /** What is to be written: the text of now over what is on disk, byte order mark included. */
    Optional<YamlDocument> toWrite() {
        return text().map(this::document);
    }

    private YamlDocument document(String text) {
        return disk.map(d -> d.with(Splice.between(d.text(), text)))
                .orElseGet(() -> YamlDocument.of(file, text));
    }
}
