package stillturning.desktop.draft;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import stillturning.yaml.Splice;

/**
 * What was done, so that it can be taken back and done again.
 *
 * @param typedIn file that somebody typed in, if that is all
 */
record UndoEntry(String name, List<Patch> patches, Optional<String> typedIn, Instant at) {

    /**
     * What became of one file.
     *
     * @param before whether it was there
     * @param after whether it is there now
     * @param splice of its text; a file that is not there counts as empty
     */
    record Patch(String file, boolean before, boolean after, Splice splice) {

        Patch inverse() {
            return new Patch(file, after, before, splice.inverse());
        }

        EditedFiles on(EditedFiles files) {
            String text = files.at(file).text().orElse("");
            return files.withText(
                    file, after ? Optional.of(splice.appliedTo(text)) : Optional.empty());
        }
    }

    UndoEntry {
        patches = List.copyOf(patches);
    }

    /** What leads from some texts to others. */
    static UndoEntry between(String name, EditedFiles before, EditedFiles after, Instant at) {
        List<Patch> patches = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>(before.names());
        names.addAll(after.names());
        for (String file : names) {
            Optional<String> old = before.at(file).text();
            Optional<String> now = after.at(file).text();
            if (!old.equals(now)) {
                Splice splice = Splice.between(old.orElse(""), now.orElse(""));
                patches.add(new Patch(file, old.isPresent(), now.isPresent(), splice));
            }
        }
        return new UndoEntry(name, patches, Optional.empty(), at);
    }

    UndoEntry typedIn(String file) {
        return new UndoEntry(name, patches, Optional.of(file), at);
    }

    boolean isNothing() {
        return patches.isEmpty();
    }

    EditedFiles again(EditedFiles files) {
        return applied(files, UnaryOperator.identity());
    }

    EditedFiles back(EditedFiles files) {
        return applied(files, Patch::inverse);
    }

    private EditedFiles applied(EditedFiles files, UnaryOperator<Patch> way) {
        EditedFiles result = files;
        for (Patch patch : patches) {
            result = way.apply(patch).on(result);
        }
        return result;
    }
}
