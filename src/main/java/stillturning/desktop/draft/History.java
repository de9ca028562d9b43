package stillturning.desktop.draft;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done and what was taken back, the latest first. */
final class History {

    private static final Duration PAUSE = Duration.ofSeconds(2);

    private final Deque<Deed> done = new ArrayDeque<>();
    private final Deque<Deed> undone = new ArrayDeque<>();
    private boolean open;

    /**
     * Remembers what was done.
     *
     * @param before texts before it
     * @param after texts after it
     */
    void add(Deed deed, Sheets before, Sheets after) {
        undone.clear();
        Deed last = done.peek();
        if (open && last != null && goesOn(last, deed)) {
            done.pop();
            Sheets start = last.back(before);
            Deed both = Deed.between(last.name(), start, after, deed.at());
            if (!both.isNothing()) {
                done.push(both.typedIn(deed.typedIn().orElseThrow()));
            }
        } else {
            done.push(deed);
        }
        open = true;
    }

    private static boolean goesOn(Deed last, Deed deed) {
        return deed.typedIn().isPresent()
                && last.typedIn().equals(deed.typedIn())
                && Duration.between(last.at(), deed.at()).compareTo(PAUSE) < 0;
    }

    /** Ends what is being typed, so that what follows is undone alone. */
    void close() {
        open = false;
    }

    Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(Deed::name);
    }

    Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Deed::name);
    }

    /** The texts before the last deed. */
    Sheets undo(Sheets now) {
        close();
        Deed deed = done.poll();
        if (deed == null) {
            return now;
        }
        undone.push(deed);
        return deed.back(now);
    }

    /** The texts after the last deed that was taken back. */
    Sheets redo(Sheets now) {
        close();
        Deed deed = undone.poll();
        if (deed == null) {
            return now;
        }
        done.push(deed);
        return deed.again(now);
    }
}
