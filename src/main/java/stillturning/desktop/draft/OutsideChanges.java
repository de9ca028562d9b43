package stillturning.desktop.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.desktop.draft.Conflict.KeptText;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** Brings the files here and the files on disk together, where somebody changed them there. */
final class OutsideChanges {

    private final Listing listing;
    private final List<String> takenOver = new ArrayList<>();
    private final List<String> merged = new ArrayList<>();
    private final SortedMap<String, Pending> conflicts = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private EditedFiles files;

    /** A choice that waits: what is here, and what is on disk. */
    record Pending(EditedFile mine, Optional<YamlDocument> theirs) {

        Conflict conflict() {
            return new Conflict(
                    Listing.nameOf(mine.file()),
                    mine.text(),
                    theirs.map(YamlDocument::text),
                    mine.diskText());
        }

        /** The file by one choice for all places, or as a whole where there are none. */
        EditedFile kept(KeptText choice) {
            int places = conflict().disputes().size();
            if (places > 0) {
                return kept(Collections.nCopies(places, choice));
            }
            return choice == KeptText.MINE
                    ? mine.onDisk(theirs)
                    : new EditedFile(mine.file(), theirs, theirs);
        }

        /**
         * The same for choices that were made of a conflict, if nothing else is disputed by now.
         */
        Optional<EditedFile> kept(Conflict asked, List<KeptText> choices) {
            boolean same = conflict().disputes().equals(asked.disputes());
            return same ? Optional.of(kept(choices)) : Optional.empty();
        }

        /** The file with one choice for each place, and what only one of the two changed. */
        EditedFile kept(List<KeptText> choices) {
            String text =
                    LineMerge.joined(
                            mine.diskText().orElse(""),
                            mine.text().orElseThrow(),
                            theirs.orElseThrow().text(),
                            choices);
            return mine.onDisk(theirs).with(Optional.of(text));
        }
    }

    OutsideChanges(EditedFiles files, Listing listing) {
        this.files = files;
        this.listing = listing;
        TreeSet<String> names = new TreeSet<>(files.names());
        names.addAll(listing.documents().keySet());
        names.removeAll(listing.unread());
        names.forEach(this::look);
    }

    EditedFiles files() {
        return files;
    }

    SortedMap<String, Pending> conflicts() {
        return conflicts;
    }

    List<String> takenOver() {
        return takenOver;
    }

    List<String> merged() {
        return merged;
    }

    /** What is wrong on disk and was not before. */
    List<Problem> problems() {
        return problems;
    }

    /** What undo calls what was brought in. */
    String name() {
        List<String> files = new ArrayList<>(takenOver);
        files.addAll(merged);
        return "Bring in what was changed outside in " + String.join(", ", files);
    }

    private void look(String name) {
        EditedFile mine = files.at(name);
        Optional<YamlDocument> theirs = listing.document(name);
        if (isSame(mine.disk(), theirs)) {
            return;
        }
        Optional<String> text = theirs.map(YamlDocument::text);
        if (text.equals(mine.text()) && isText(theirs)) {
            files = files.with(name, new EditedFile(mine.file(), theirs, theirs));
        } else if (text.equals(mine.diskText()) && isText(theirs)) {
            files = files.with(name, mine.onDisk(theirs));
        } else if (theirs.isEmpty() && name.equals(EditedFiles.STUDY)) {
            files = files.with(name, mine.onDisk(theirs));
            String wrong = "the study's file is no longer on disk";
            String right = "save, and it is written again";
            problems.add(new Problem(mine.file(), 1, 1, "", wrong, right));
        } else if (!mine.isUnsaved()) {
            files = files.with(name, new EditedFile(mine.file(), theirs, theirs));
            takenOver.add(name);
        } else {
            both(name, mine, theirs);
        }
    }

    private static boolean isSame(Optional<YamlDocument> one, Optional<YamlDocument> other) {
        return one.isPresent() == other.isPresent()
                && one.flatMap(YamlDocument::onDisk).equals(other.flatMap(YamlDocument::onDisk));
    }

    private static boolean isText(Optional<YamlDocument> document) {
        return document.isEmpty() || document.get().onDisk().isPresent();
    }

    private void both(String name, EditedFile mine, Optional<YamlDocument> theirs) {
        Optional<String> text = theirs.filter(t -> isText(theirs)).map(YamlDocument::text);
        if (mine.text().isPresent() && text.isPresent()) {
            Optional<String> joined =
                    LineMerge.of(mine.diskText().orElse(""), mine.text().get(), text.get());
            Optional<EditedFile> result =
                    joined.map(j -> mine.onDisk(theirs).with(joined))
                            .filter(r -> isNoWorse(r, mine, theirs));
            if (result.isPresent()) {
                files = files.with(name, result.get());
                merged.add(name);
                return;
            }
        }
        conflicts.put(name, new Pending(mine, theirs));
    }

    /** Whether what was joined can be read, if both could be read. */
    private static boolean isNoWorse(
            EditedFile result, EditedFile mine, Optional<YamlDocument> theirs) {
        return faults(result.now()) <= Math.max(faults(mine.now()), faults(theirs));
    }

    private static int faults(Optional<YamlDocument> document) {
        return document.map(d -> d.problems().size()).orElse(0);
    }
}
