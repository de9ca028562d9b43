package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Keeps unsaved work in a journal, a moment after each change. */
final class Autosave {

    private static final long MILLISECONDS = 500;

    private final JournalPolicy policy;
    private final Path study;
    private final Supplier<EditedFiles> files;
    private final Consumer<String> failed;
    private Optional<Journal> journal = Optional.empty();
    private Optional<Future<?>> due = Optional.empty();
    private boolean closed;

    /**
     * @param files the files as they are when it is time to write
     * @param failed hears why work could not be kept
     */
    Autosave(
            JournalPolicy policy,
            Path study,
            Supplier<EditedFiles> files,
            Consumer<String> failed) {
        this.policy = policy;
        this.study = study;
        this.files = files;
        this.failed = failed;
    }

    /** Writes soon. */
    synchronized void changed() {
        if (due.isEmpty() && !closed) {
            Runnable write = this::write;
            ScheduledExecutorService executor = policy.executor();
            due = Optional.of(executor.schedule(write, MILLISECONDS, TimeUnit.MILLISECONDS));
        }
    }

    /**
     * Writes now.
     *
     * @return whether it is written
     */
    synchronized boolean write() {
        due = Optional.empty();
        if (closed) {
            return false;
        }
        EditedFiles now = files.get();
        try {
            if (!now.unsaved().isEmpty()) {
                own().write(JournalText.of(now, policy.clock().instant()));
            } else if (journal.isPresent()) {
                journal.get().clear();
            }
            return true;
        } catch (IOException refused) {
            failed.accept("unsaved work cannot be kept in " + policy.folder() + ": " + refused);
            return false;
        }
    }

    private Journal own() throws IOException {
        if (journal.isEmpty()) {
            journal = Optional.of(Journal.begin(policy.folder(), study));
        }
        return journal.get();
    }

    /** Writes what is unsaved, and makes it available to the next reader. */
    synchronized void leave() {
        if (!write() || files.get().unsaved().isEmpty()) {
            return;
        }
        closed = true;
        journal.ifPresent(own -> own.letGo(failed));
    }

    /** Takes what was kept away, since nobody will miss it. */
    synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        due.ifPresent(write -> write.cancel(false));
        journal.ifPresent(own -> own.end(failed));
    }
}
