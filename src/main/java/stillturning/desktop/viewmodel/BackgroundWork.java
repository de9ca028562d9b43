package stillturning.desktop.viewmodel;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Work in the background, at most one piece of each name: a newer one calls the older off, and what
 * the older brings is thrown away. Answers arrive on the screen's thread, and every method is to be
 * called there.
 */
public final class BackgroundWork implements AutoCloseable {

    /** Something that takes time. */
    public interface Work<T> {
        /**
         * Does it.
         *
         * @throws Exception whatever keeps it from being done
         */
        T done(WorkHandle progress) throws Exception;
    }

    /** What the work holds on to. */
    public interface WorkHandle {
        /**
         * Says how far it is.
         *
         * @param share from 0 to 1; below 0 if nobody knows
         * @throws CancellationException if nobody waits for it any more
         */
        void report(double share, String words);

        /** Does something on the screen's thread, unless nobody waits any more. */
        void show(Runnable found);
    }

    /** Work that is under way: how far, from 0 to 1 or below 0, and what it is at. */
    public record Running(String name, double share, String words) {}

    private final Executor screen;
    private final ExecutorService threads;
    private final Map<String, Task<?>> latest = new HashMap<>();
    private final ObservableList<Running> running = FXCollections.observableArrayList();
    // kept, since a view that nobody holds would stop telling its listeners
    private final ObservableList<Running> seen = FXCollections.unmodifiableObservableList(running);

    /**
     * @param screen where answers are given
     */
    public BackgroundWork(Executor screen) {
        this.screen = screen;
        this.threads =
                Executors.newCachedThreadPool(
                        task -> {
                            Thread thread = new Thread(task, "background work");
                            thread.setDaemon(true);
                            return thread;
                        });
    }

    /** What is under way, by name of the work. */
    public ObservableList<Running> running() {
        return seen;
    }

    /**
     * Starts work, and calls off what goes by the same name.
     *
     * @param name what the user reads while it lasts
     * @param then takes the result
     * @param failed takes whatever kept it from being done
     */
    public <T> void start(String name, Work<T> work, Consumer<T> then, Consumer<Exception> failed) {
        cancel(name);
        Task<T> task = new Task<>(name, work, then, failed);
        latest.put(name, task);
        running.add(new Running(name, -1, name));
        threads.execute(task);
    }

    /** Calls work off; nothing more is heard of it. */
    public void cancel(String name) {
        Task<?> old = latest.remove(name);
        if (old != null) {
            old.cancelled = true;
            running.removeIf(u -> u.name().equals(name));
        }
    }

    /** Whether work of this name is under way. */
    public boolean busy(String name) {
        return latest.containsKey(name);
    }

    @Override
    public void close() {
        Map.copyOf(latest).keySet().forEach(this::cancel);
        threads.shutdownNow();
    }

    private final class Task<T> implements Runnable, WorkHandle {
        private final String name;
        private final Work<T> work;
        private final Consumer<T> then;
        private final Consumer<Exception> failed;
        private volatile boolean cancelled;

        Task(String name, Work<T> work, Consumer<T> then, Consumer<Exception> failed) {
            this.name = name;
            this.work = work;
            this.then = then;
            this.failed = failed;
        }

        @Override
        public void report(double share, String words) {
            if (cancelled) {
                throw new CancellationException(name);
            }
            screen.execute(() -> tell(new Running(name, share, words)));
        }

        @Override
        public void show(Runnable found) {
            screen.execute(
                    () -> {
                        if (!cancelled) {
                            found.run();
                        }
                    });
        }

        private void tell(Running how) {
            if (!cancelled) {
                running.replaceAll(u -> u.name().equals(name) ? how : u);
            }
        }

        @Override
        @SuppressWarnings("CatchingUnchecked") // whatever goes wrong in the background is told
        public void run() {
            try {
                T result = work.done(this);
                screen.execute(() -> end(() -> then.accept(result)));
            } catch (Exception e) {
                screen.execute(() -> end(() -> failed.accept(e)));
            }
        }

        private void end(Runnable last) {
            if (!cancelled) {
                latest.remove(name);
                running.removeIf(u -> u.name().equals(name));
                last.run();
            }
        }
    }
}
