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
public final class Errands implements AutoCloseable {

    /** Something that takes time. */
    public interface Work<T> {
        /**
         * Does it.
         *
         * @throws Exception whatever keeps it from being done
         */
        T done(Reins reins) throws Exception;
    }

    /** What the work holds on to. */
    public interface Reins {
        /**
         * Says how far it is.
         *
         * @param share from 0 to 1; below 0 if nobody knows
         * @throws CancellationException if nobody waits for it any more
         */
        void far(double share, String words);
    }

    /** Work that is under way: how far, from 0 to 1 or below 0, and what it is at. */
    public record UnderWay(String name, double share, String words) {}

    private final Executor screen;
    private final ExecutorService threads;
    private final Map<String, Errand<?>> latest = new HashMap<>();
    private final ObservableList<UnderWay> underWay = FXCollections.observableArrayList();
    // kept, since a view that nobody holds would stop telling its listeners
    private final ObservableList<UnderWay> seen =
            FXCollections.unmodifiableObservableList(underWay);

    /**
     * @param screen where answers are given
     */
    public Errands(Executor screen) {
        this.screen = screen;
        this.threads =
                Executors.newCachedThreadPool(
                        task -> {
                            Thread thread = new Thread(task, "errand");
                            thread.setDaemon(true);
                            return thread;
                        });
    }

    /** What is under way, by name of the work. */
    public ObservableList<UnderWay> underWay() {
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
        callOff(name);
        Errand<T> errand = new Errand<>(name, work, then, failed);
        latest.put(name, errand);
        underWay.add(new UnderWay(name, -1, name));
        threads.execute(errand);
    }

    /** Calls work off; nothing more is heard of it. */
    public void callOff(String name) {
        Errand<?> old = latest.remove(name);
        if (old != null) {
            old.calledOff = true;
            underWay.removeIf(u -> u.name().equals(name));
        }
    }

    /** Whether work of this name is under way. */
    public boolean busy(String name) {
        return latest.containsKey(name);
    }

    @Override
    public void close() {
        Map.copyOf(latest).keySet().forEach(this::callOff);
        threads.shutdownNow();
    }

    private final class Errand<T> implements Runnable, Reins {
        private final String name;
        private final Work<T> work;
        private final Consumer<T> then;
        private final Consumer<Exception> failed;
        private volatile boolean calledOff;

        Errand(String name, Work<T> work, Consumer<T> then, Consumer<Exception> failed) {
            this.name = name;
            this.work = work;
            this.then = then;
            this.failed = failed;
        }

        @Override
        public void far(double share, String words) {
            if (calledOff) {
                throw new CancellationException(name);
            }
            screen.execute(() -> tell(new UnderWay(name, share, words)));
        }

        private void tell(UnderWay how) {
            if (!calledOff) {
                underWay.replaceAll(u -> u.name().equals(name) ? how : u);
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
            if (!calledOff) {
                latest.remove(name);
                underWay.removeIf(u -> u.name().equals(name));
                last.run();
            }
        }
    }
}
