package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.yaml.YamlDocument;

/** The journals that ended programs have left on one study. */
final class Recovery {

    /** A journal and what stands in it. */
    private record Left(Journal journal, JournalText text) {}

    private final Map<Recovered, Left> left = new LinkedHashMap<>();
    private final Consumer<String> failed;

    private Recovery(Consumer<String> failed) {
        this.failed = failed;
    }

    /** Nothing. */
    static Recovery none() {
        return new Recovery(why -> {});
    }

    /** Finds them all. What cannot be read is put aside. */
    static Recovery find(Path folder, Path study, EditedFiles files, Consumer<String> failed) {
        Recovery recovery = new Recovery(failed);
        try {
            for (Journal journal : Journal.left(folder, study)) {
                recovery.add(journal, files);
            }
        } catch (IOException unreadable) {
            failed.accept("the folder of unsaved work cannot be read: " + unreadable);
        }
        return recovery;
    }

    private void add(Journal journal, EditedFiles files) throws IOException {
        JournalText text;
        try {
            text = journal.read();
        } catch (IOException damaged) {
            journal.putAside();
            failed.accept("unsaved work was found that cannot be read, and put aside");
            return;
        }
        List<Recovered.UnsavedFile> unsaved = new ArrayList<>();
        for (JournalText.UnsavedText entry : text.entries()) {
            Optional<String> onDisk = files.at(entry.file()).disk().flatMap(YamlDocument::onDisk);
            unsaved.add(
                    new Recovered.UnsavedFile(
                            entry.file(),
                            entry.text().isEmpty(),
                            !onDisk.equals(entry.baseOnDisk())));
        }
        left.put(new Recovered(text.when(), unsaved), new Left(journal, text));
    }

    synchronized List<Recovered> all() {
        return List.copyOf(left.keySet());
    }

    /** The files with the work in them, on the ground that it began with. */
    synchronized EditedFiles onto(EditedFiles files, Recovered recovered) {
        EditedFiles result = files;
        Left found = left.get(recovered);
        if (found != null) {
            for (JournalText.UnsavedText entry : found.text.entries()) {
                Path file = files.at(entry.file()).file();
                Optional<YamlDocument> base = entry.base().map(b -> YamlDocument.of(file, b));
                Optional<YamlDocument> now = entry.text().map(t -> YamlDocument.of(file, t));
                result = result.with(entry.file(), new EditedFile(file, base, now));
            }
        }
        return result;
    }

    /** Takes the journal away. */
    synchronized void end(Recovered recovered) {
        Optional.ofNullable(left.remove(recovered)).ifPresent(found -> found.journal.end(failed));
    }

    /** Leaves what was neither taken nor dropped to the next one who asks. */
    synchronized void letGo() {
        left.values().forEach(found -> found.journal.letGo(failed));
        left.clear();
    }
}
