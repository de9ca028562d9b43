package stillturning.desktop.draft;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done and what was taken back, the latest first. */
final class History {

    private static final Duration PAUSE = Duration.ofSeconds(2);

    private final Deque<UndoEntry> done = new ArrayDeque<>();
    private final Deque<UndoEntry> undone = new ArrayDeque<>();
    private boolean open;

    /**
     * Remembers what was done.
     *
     * @param before texts before it
     * @param after texts after it
     */
    void add(UndoEntry entry, EditedFiles before, EditedFiles after) {
        undone.clear();
        UndoEntry last = done.peek();
        if (open && last != null && goesOn(last, entry)) {
            done.pop();
            EditedFiles start = last.back(before);
            UndoEntry both = UndoEntry.between(last.name(), start, after, entry.at());
            if (!both.isNothing()) {
                done.push(both.typedIn(entry.typedIn().orElseThrow()));
            }
        } else {
            done.push(entry);
        }
        open = true;
    }

    private static boolean goesOn(UndoEntry last, UndoEntry entry) {
        return entry.typedIn().isPresent()
                && last.typedIn().equals(entry.typedIn())
                && Duration.between(last.at(), entry.at()).compareTo(PAUSE) < 0;
    }

    /** Ends what is being typed, so that what follows is undone alone. */
    void close() {
        open = false;
    }

    Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(UndoEntry::name);
    }

    Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(UndoEntry::name);
    }

    /** The texts before the last change. */
    EditedFiles undo(EditedFiles now) {
        return moved(done, undone).map(entry -> entry.back(now)).orElse(now);
    }

    /** The texts after the last change that was taken back. */
    EditedFiles redo(EditedFiles now) {
        return moved(undone, done).map(entry -> entry.again(now)).orElse(now);
    }

    private Optional<UndoEntry> moved(Deque<UndoEntry> from, Deque<UndoEntry> to) {
        close();
        Optional<UndoEntry> entry = Optional.ofNullable(from.poll());
        entry.ifPresent(to::push);
        return entry;
    }
}
