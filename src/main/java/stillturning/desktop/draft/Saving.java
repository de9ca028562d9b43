package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.ChangedOnDisk;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** Writes single files, and says what kept one from being written. */
final class Saving {

    private static final String THEN_AGAIN =
            "look at the permissions of the folder and the space on the disk, then save again";

    private final Path folder;

    Saving(Path folder) {
        this.folder = folder;
    }

    /** Unsaved files, those that go away last, so that nothing is ever in no file. */
    List<String> inOrder(EditedFiles files) {
        return files.unsaved().stream()
                .sorted(Comparator.comparing((String name) -> files.at(name).now().isEmpty()))
                .toList();
    }

    /** What is on disk after writing; absent after a problem was told. */
    Optional<Optional<YamlDocument>> write(EditedFile file, List<Problem> failed) {
        try {
            Optional<YamlDocument> next = file.toWrite();
            if (next.isPresent()) {
                return Optional.of(Optional.of(next.get().save()));
            }
            if (file.disk().isPresent()) {
                file.disk().get().delete();
            }
            return Optional.of(Optional.empty());
        } catch (ChangedOnDisk meanwhile) {
            String wrong = String.valueOf(meanwhile.getMessage());
            failed.add(new Problem(file.file(), 1, 1, "", wrong, "save again"));
        } catch (IOException refused) {
            failed.add(refused(file.file(), refused));
        }
        return Optional.empty();
    }

    private static Problem refused(Path file, IOException why) {
        return new Problem(file, 1, 1, "", "the file cannot be written: " + why, THEN_AGAIN);
    }

    /** Tells that a file cannot be saved before somebody chose. */
    Problem waits(String name) {
        return new Problem(
                folder.resolve(name),
                1,
                1,
                "",
                "the file was changed here and outside",
                "choose which of the two to keep, then save again");
    }
}
