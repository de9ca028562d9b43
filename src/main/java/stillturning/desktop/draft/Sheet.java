package stillturning.desktop.draft;

import java.nio.file.Path;
import java.util.Optional;
import stillturning.yaml.Splice;
import stillturning.yaml.YamlDocument;

/**
 * One file of a study: as it was last read or saved, and as it is now. At least one of the two is
 * there.
 */
record Sheet(Path file, Optional<YamlDocument> disk, Optional<YamlDocument> now) {

    /** A file as it was just read. */
    static Sheet read(YamlDocument document) {
        return new Sheet(document.file(), Optional.of(document), Optional.of(document));
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
    Sheet with(Optional<String> text) {
        return text.equals(text()) ? this : new Sheet(file, disk, text.map(this::document));
    }

    /** The same with a document that was made from its own. */
    Sheet with(YamlDocument edited) {
        return new Sheet(file, disk, Optional.of(edited));
    }

    /** The same with something else on disk. */
    Sheet onDisk(Optional<YamlDocument> other) {
        return new Sheet(file, other, now);
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
