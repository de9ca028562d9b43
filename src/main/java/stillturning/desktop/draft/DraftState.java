package stillturning.desktop.draft;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import stillturning.yaml.Problem;

/**
 * A study's files at one moment of editing.
 *
 * @param revision grows with every change of a text
 * @param texts by name of file; the deleted ones are missing
 * @param unsaved files that are not on disk as they are here, the deleted ones too
 * @param undo name of what undo would take back
 * @param redo name of what redo would do again
 * @param conflicts files that wait for a choice
 * @param problems what reading and writing files met last
 */
public record DraftState(
        long revision,
        SortedMap<String, String> texts,
        SortedSet<String> unsaved,
        Optional<String> undo,
        Optional<String> redo,
        List<Conflict> conflicts,
        List<Problem> problems) {

    public DraftState {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
        unsaved = Collections.unmodifiableSortedSet(new TreeSet<>(unsaved));
        conflicts = List.copyOf(conflicts);
        problems = List.copyOf(problems);
    }

    static DraftState of(
            long revision,
            EditedFiles files,
            History history,
            List<Conflict> conflicts,
            List<Problem> problems) {
        return new DraftState(
                revision,
                files.texts(),
                files.unsaved(),
                history.undoName(),
                history.redoName(),
                conflicts,
                problems);
    }

    /** Whether nothing would be lost if the program ended now. */
    public boolean isSaved() {
        return unsaved.isEmpty();
    }
}
